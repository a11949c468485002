package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.undercall.adapter.procedure.BlockFiles.Source;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/**
 * Puts a procedure together: every reference becomes the value it names, every include the phases
 * or steps of its block.
 *
 * <p>What cannot be had is reported and left out, so that the rest is checked all the same.
 */
final class Assembly {
  static final int MOST_INCLUDES = 100;

  private static final String GIVEN = "given";
  private static final String TAKES = "takes";
  private static final String PHASES = "phases";
  private static final String STEPS = "steps";

  private final Faults faults;
  private final BlockFiles blocks;
  private int includes;
  private int values;

  private Assembly(Path procedure, Faults faults) {
    this.faults = faults;
    this.blocks = new BlockFiles(procedure, faults);
  }

  /**
   * A whole procedure, as one tree.
   *
   * @param root without includes and references
   * @param faults what was found up to now, and where each value of the tree is written
   * @param blocks the blocks in it
   */
  record Whole(JsonNode root, Faults faults, List<Part> blocks) {}

  /**
   * Puts a procedure together.
   *
   * @param root what its file holds
   * @param name of its file in faults
   * @param read the faults of its file, and where its values stand
   * @throws Fault if it is too large, which stands alone
   */
  static Whole of(JsonNode root, Path file, String name, Faults read) throws Fault {
    Faults faults = new Faults(name);
    faults.take(read);
    Assembly assembly = new Assembly(file, faults);
    Piece whole = assembly.procedure(new Source(name, BlockFiles.real(file), Piece.of(root, read)));
    WholeTree tree = new WholeTree(faults);
    JsonNode laid = tree.of(whole);
    if (assembly.tooLarge() || tree.tooLarge()) {
      throw tooLarge(name);
    }
    return new Whole(laid, faults, assembly.blocks.parts());
  }

  /** Says that a procedure is too large with its blocks. */
  static Fault tooLarge(String name) {
    Faults alone = new Faults(name);
    String expected = "at most " + LocatedJson.MOST_VALUES + " values and 2 MB";
    alone.at(
        ProcedureCode.ASSEMBLED_TOO_LARGE, "", Faults.Position.NONE, "more, with blocks", expected);
    return alone.all();
  }

  private boolean tooLarge() {
    return values > LocatedJson.MOST_VALUES || blocks.tooLarge();
  }

  private Piece procedure(Source file) {
    Map<String, Piece.Member> given = given(file.root());
    Scope scope = new Scope(given, faults);
    Within within = new Within(scope, "", List.of(file));
    Map<String, Piece.Member> members = new LinkedHashMap<>(file.root().members());
    members.remove(GIVEN);
    Piece whole =
        file.root()
            .withMembers(
                each(
                    members,
                    (name, piece) ->
                        name.equals(PHASES)
                            ? list(piece, PHASES, within)
                            : resolved(piece, scope)));
    scope.requireUsed(given);
    return whole;
  }

  /** The vehicle's values; in them, nothing can be referred to. */
  private Map<String, Piece.Member> given(Piece root) {
    Optional<Piece> given = root.at(GIVEN);
    if (given.isPresent() && !given.get().value().isObject()) {
      String found = Shown.value(given.get().value());
      faults.at(ProcedureCode.WRONG_TYPE, given.get().spot(), found, "an object of given values");
    }
    Map<String, Piece.Member> members = given.map(Piece::members).orElse(Map.of());
    Scope.requireNames(members, faults);
    return resolved(members, new Scope(Map.of(), faults));
  }

  private static Piece.Member with(Piece.Member member, Piece piece) {
    return new Piece.Member(member.key(), piece);
  }

  /** Fields of an object, without those that are left out on purpose. */
  private Map<String, Piece.Member> resolved(Map<String, Piece.Member> members, Scope scope) {
    Map<String, Piece.Member> kept = new LinkedHashMap<>(members);
    kept.values().removeIf(member -> scope.leavesOut(member.piece()));
    return eachResolved(kept, scope);
  }

  private Map<String, Piece.Member> eachResolved(Map<String, Piece.Member> members, Scope scope) {
    return each(members, (name, piece) -> resolved(piece, scope));
  }

  private static Map<String, Piece.Member> each(
      Map<String, Piece.Member> members, BiFunction<String, Piece, Piece> change) {
    Map<String, Piece.Member> changed = new LinkedHashMap<>();
    members.forEach(
        (name, member) -> changed.put(name, with(member, change.apply(name, member.piece()))));
    return changed;
  }

  private Piece resolved(Piece piece, Scope scope) {
    if (++values > LocatedJson.MOST_VALUES) {
      return piece.lost();
    }
    if (piece.isReference()) {
      return scope.of(piece);
    }
    if (piece.value().isObject()) {
      return piece.withMembers(resolved(piece.members(), scope));
    }
    return piece.withItems(
        piece.items().stream()
            .filter(item -> !scope.leavesOut(item))
            .map(item -> resolved(item, scope))
            .toList());
  }

  /** A list of phases or of steps, with what is included in it. */
  private Piece list(Piece list, String kind, Within within) {
    if (!list.value().isArray()) {
      return resolved(list, within.scope());
    }
    List<Piece> items = new ArrayList<>();
    for (Piece item : list.items()) {
      if (item.isInclude()) {
        items.addAll(included(item, kind, within));
      } else {
        items.add(kind.equals(PHASES) ? phase(item, within) : step(item, within));
      }
    }
    return list.withItems(items);
  }

  private Piece phase(Piece phase, Within within) {
    if (phase.isReference() || !phase.value().isObject()) {
      return resolved(phase, within.scope());
    }
    values++;
    return phase.withMembers(
        each(
            phase.members(),
            (name, piece) ->
                name.equals(STEPS) ? list(piece, STEPS, within) : resolved(piece, within.scope())));
  }

  /** A step; ids that the block itself names are those of its own steps, given ones are not. */
  private Piece step(Piece step, Within within) {
    boolean given = step.isReference();
    Piece written = given ? step : step.withMembers(prefixed(step.members(), within));
    Piece whole = resolved(written, within.scope());
    Map<String, Piece.Member> members = new LinkedHashMap<>(whole.members());
    members.computeIfPresent(
        "id", (name, member) -> with(member, member.piece().after(within.prefix())));
    return whole.withMembers(given ? prefixed(members, within) : members);
  }

  private static Map<String, Piece.Member> prefixed(Map<String, Piece.Member> step, Within within) {
    Map<String, Piece.Member> members = new LinkedHashMap<>(step);
    for (String list : List.of("after", "undoes")) {
      members.computeIfPresent(list, (name, member) -> with(member, prefixed(member, within)));
    }
    return members;
  }

  /** A list of ids of the same block. */
  private static Piece prefixed(Piece.Member list, Within within) {
    return list.piece()
        .withItems(
            list.piece().items().stream()
                .map(id -> id.value().isTextual() ? id.after(within.prefix()) : id)
                .toList());
  }

  private List<Piece> included(Piece piece, String kind, Within within) {
    if (tooLarge() || ++includes > MOST_INCLUDES) {
      if (includes == MOST_INCLUDES + 1) {
        String expected = "at most " + MOST_INCLUDES;
        faults.at(ProcedureCode.TOO_MANY_INCLUDES, piece.spot(), "one more include", expected);
      }
      return List.of(piece.lost());
    }
    Optional<Include> include = Include.of(piece, faults);
    if (include.isEmpty()) {
      piece.at("with").ifPresent(with -> resolved(with, within.scope()));
      return List.of(piece.lost());
    }
    Scope.requireNames(include.get().with(), faults);
    Map<String, Piece.Member> with = eachResolved(include.get().with(), within.scope());
    return blocks
        .named(include.get(), kind, within)
        .map(block -> filled(block, include.get(), with, within))
        .orElse(List.of(piece.lost()));
  }

  private List<Piece> filled(
      Source block, Include include, Map<String, Piece.Member> with, Within within) {
    Map<String, Piece.Member> takes = block.root().at(TAKES).orElseThrow().members();
    Scope scope = Scope.of(include, with, takes, faults);
    String kind = block.root().at(PHASES).isPresent() ? PHASES : STEPS;
    Piece list = block.root().at(kind).orElseThrow();
    Piece whole = list(list, kind, within.inside(scope, include.ids(), block));
    scope.requireUsed(takes);
    return within.depth() > 0
        ? whole.items()
        : whole.items().stream()
            .map(item -> item.broughtBy(include.at().spot().pointer()))
            .toList();
  }
}
