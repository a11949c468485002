package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.undercall.text.Yaml;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.CommentEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;

/** Finds where each value of a YAML text is written; the text was read before without a fault. */
final class YamlStretches {
  private final String text;
  private final boolean wide;
  private final Iterator<Event> events;
  private Event event;

  private YamlStretches(String text) {
    this.text = text;
    this.wide = text.codePointCount(0, text.length()) < text.length();
    this.events = Yaml.events(text, false).iterator();
    this.event = events.next();
  }

  /** The stretch of the whole value; empty if the text is written in a way that is not known. */
  static Optional<Stretch> of(String text, JsonNode root) {
    YamlStretches stretches = new YamlStretches(text);
    while (!stretches.isValue()) {
      stretches.next();
    }
    try {
      return Optional.of(stretches.value(root));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The comments of a text, in order. */
  static List<String> comments(String text) {
    List<String> comments = new ArrayList<>();
    for (Event each : Yaml.events(text, true)) {
      if (each instanceof CommentEvent comment && !comment.getValue().isBlank()) {
        comments.add(comment.getValue().strip());
      }
    }
    return comments;
  }

  private boolean isValue() {
    return event instanceof ScalarEvent || event instanceof CollectionStartEvent;
  }

  private void next() {
    event = events.next();
  }

  private int at(Mark mark) {
    return wide ? text.offsetByCodePoints(0, mark.getIndex()) : mark.getIndex();
  }

  private Stretch value(JsonNode node) {
    int start = at(event.getStartMark());
    if (event instanceof ScalarEvent) {
      int end = at(event.getEndMark());
      next();
      return Stretch.plain(
          node, start, start + text.substring(start, end).stripTrailing().length());
    }
    boolean block = ((CollectionStartEvent) event).getFlowStyle() == FlowStyle.BLOCK;
    List<Stretch.Inner> inner = new ArrayList<>();
    if (event instanceof MappingStartEvent) {
      fields(node, inner);
    } else if (event instanceof SequenceStartEvent) {
      items(node, block, start, inner);
    }
    int end = at(event.getEndMark());
    next();
    return new Stretch(node, start, block ? inner.get(inner.size() - 1).end() : end, block, inner);
  }

  private void fields(JsonNode node, List<Stretch.Inner> inner) {
    next();
    while (event instanceof ScalarEvent key) {
      int start = at(key.getStartMark());
      int head = at(key.getEndMark());
      next();
      inner.add(new Stretch.Inner(key.getValue(), start, head, value(node.get(key.getValue()))));
    }
  }

  private void items(JsonNode node, boolean block, int from, List<Stretch.Inner> inner) {
    next();
    int searched = from;
    while (isValue()) {
      int value = at(event.getStartMark());
      int start = block ? dash(searched, value) : value;
      inner.add(
          new Stretch.Inner("", start, block ? start + 1 : value, value(node.get(inner.size()))));
      searched = inner.get(inner.size() - 1).end();
    }
  }

  /** The dash before an item: nothing but blanks stand between the two. */
  private int dash(int from, int value) {
    int dash = text.lastIndexOf('-', value == from ? value : value - 1);
    if (dash < from || !text.substring(dash + 1, Math.max(dash + 1, value)).isBlank()) {
      throw new IllegalArgumentException("no dash before " + value);
    }
    return dash;
  }
}
