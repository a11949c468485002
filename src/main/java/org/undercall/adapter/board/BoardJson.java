package org.undercall.adapter.board;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.undercall.core.board.Board;
import org.undercall.core.board.Choice;
import org.undercall.core.board.Frame;
import org.undercall.core.board.Task;
import org.undercall.core.term.Kebab;

/**
 * Writes a board as JSON on one line: texts and numbers only, times in milliseconds of the epoch.
 */
final class BoardJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private BoardJson() {}

  static String of(Board board) {
    ObjectNode root = NODES.objectNode();
    root.put("state", board.times().state());
    root.set("times", times(board.times()));
    root.set("place", place(board.place()));
    root.set("task", task(board.task()));
    root.set("talk", talk(board.talk()));
    root.set("frame", frame(board.frame()));
    root.set("steps", steps(board.walk()));
    root.put("next", board.walk().next());
    root.set("timers", timers(board.walk()));
    root.set("choices", choices(board.walk()));
    return root.toString();
  }

  private static ObjectNode frame(Frame frame) {
    ObjectNode node =
        NODES
            .objectNode()
            .put("vehicle", frame.vehicle())
            .put("title", frame.title())
            .put("values", frame.values())
            .put("invented", frame.invented())
            .put("occasion", name(frame.occasion()));
    ArrayNode cautions = node.putArray("cautions");
    frame
        .cautions()
        .forEach(line -> cautions.addObject().put("text", line.text()).put("brief", line.brief()));
    ArrayNode here = node.putArray("here");
    frame.here().forEach(here::add);
    return node;
  }

  private static ObjectNode times(Board.Times times) {
    return NODES
        .objectNode()
        .put("made", times.now().toEpochMilli())
        .put("work", times.elapsed().work())
        .put("step", times.elapsed().step())
        .put("runs", times.elapsed().runs());
  }

  private static ObjectNode place(Board.Place place) {
    return NODES
        .objectNode()
        .put("number", place.number())
        .put("side", name(place.side()))
        .put("title", place.title())
        .put("load", name(place.load()))
        .put("holds", place.holds());
  }

  private static ObjectNode task(Task task) {
    ObjectNode node = NODES.objectNode().put("phase", name(task.phase()));
    node.put("digits", task.figure().digits());
    node.put("unit", task.figure().unit());
    node.put("beside", task.figure().beside());
    ArrayNode stages = node.putArray("stages");
    task.stages()
        .forEach(
            mark ->
                stages
                    .addObject()
                    .put("torque", mark.torque())
                    .put("text", mark.text())
                    .put("closed", mark.closed()));
    ArrayNode set = node.putArray("set");
    task.set()
        .forEach(
            spot -> set.addObject().put("number", spot.number()).put("state", name(spot.state())));
    ArrayNode order = node.putArray("order");
    task.order().forEach(order::add);
    node.put("check", task.check());
    ArrayNode gear = node.putArray("gear");
    task.gear()
        .forEach(
            one ->
                gear.addObject()
                    .put("what", name(one.what()))
                    .put("name", one.name())
                    .put("note", one.note()));
    ArrayNode details = node.putArray("details");
    task.details().forEach(details::add);
    return node;
  }

  private static ObjectNode talk(Board.Talk talk) {
    ObjectNode node = NODES.objectNode().put("said", talk.said()).put("prompt", talk.prompt());
    ArrayNode devices = node.putArray("devices");
    talk.devices()
        .news()
        .forEach(
            news -> devices.addObject().put("news", name(news)).put("text", news.words().text()));
    talk.heard()
        .ifPresent(
            heard ->
                node.putObject("heard")
                    .put("text", heard.text())
                    .put("how", heard.how())
                    .put("verdict", name(heard.verdict())));
    return node;
  }

  private static ArrayNode steps(Board.Overview walk) {
    ArrayNode steps = NODES.arrayNode();
    walk.steps()
        .forEach(
            item ->
                steps
                    .addObject()
                    .put("side", name(item.side()))
                    .put("title", item.title())
                    .put("status", name(item.status()))
                    .put("why", item.why()));
    return steps;
  }

  private static ArrayNode timers(Board.Overview walk) {
    ArrayNode timers = NODES.arrayNode();
    walk.timers()
        .forEach(
            timer ->
                timers
                    .addObject()
                    .put("what", timer.what())
                    .put("step", timer.step())
                    .put("due", timer.due().toEpochMilli()));
    return timers;
  }

  private static ArrayNode choices(Board.Overview walk) {
    ArrayNode choices = NODES.arrayNode();
    for (Choice choice : walk.choices()) {
      choices
          .addObject()
          .put("phrase", choice.phrase())
          .put("action", choice.action())
          .put("group", name(choice.group()))
          .put("effect", name(choice.effect()))
          .put("twice", choice.twice());
    }
    return choices;
  }

  private static String name(Enum<?> constant) {
    return Kebab.of(constant);
  }
}
