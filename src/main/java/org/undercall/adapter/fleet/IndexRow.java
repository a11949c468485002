package org.undercall.adapter.fleet;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.undercall.core.review.Facts;
import org.undercall.port.Fault;

/**
 * A session in the index: one JSON object in one line, its members named as these in snake case.
 *
 * @param version of the way in which facts are worked out
 * @param made when the index was begun
 * @param session the name of its folder
 * @param stamp of its files when they were read
 * @param vehicle what its procedure is for; blank if that is not known
 * @param damage what is wrong with it, with its code; blank if it is whole
 * @param facts what it comes to
 */
public record IndexRow(
    int version,
    String made,
    String session,
    String stamp,
    String vehicle,
    String damage,
    Facts facts) {

  /** To be raised with every change to the facts or to how they are worked out. */
  static final int VERSION = 4;

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .build();

  /** The row of a session whose files were just looked at. */
  static IndexRow of(SessionFiles files, Examiner.Examined found, String made) {
    String session = files.session();
    if (files.trouble().isEmpty()) {
      return new IndexRow(
          VERSION, made, session, files.stamp(), found.vehicle(), found.damage(), found.facts());
    }
    String place = "session " + session;
    Fault fault =
        new Fault(
            FleetCode.UNREADABLE_SESSION, place, files.trouble(), "a session that can be read");
    String damage = found.damage().isEmpty() ? fault.getMessage() : found.damage();
    Facts none = Facts.damaged("", "", "", 0);
    return new IndexRow(VERSION, made, session, files.stamp(), "", damage, none);
  }

  /** Whether nothing is computed from it. */
  public boolean damaged() {
    return !damage.isEmpty();
  }

  /** The line, without its end. */
  String line() {
    try {
      return MAPPER.writeValueAsString(this);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a row always has a text", e);
    }
  }

  static IndexRow of(String line) throws IOException {
    return MAPPER.readValue(line, IndexRow.class);
  }

  /** What stands before the facts: enough to tell whether they still hold. */
  record Head(int version, String made, String session, String stamp) {
    private static final int MEMBERS = 4;

    static Head of(String line) throws IOException {
      Map<String, String> texts = new HashMap<>();
      try (JsonParser parser = MAPPER.createParser(line)) {
        parser.nextToken();
        for (int i = 0; i < MEMBERS; i++) {
          String name = String.valueOf(parser.nextFieldName());
          parser.nextToken();
          texts.put(name, String.valueOf(parser.getText()));
        }
      }
      boolean mine = texts.getOrDefault("version", "").equals(String.valueOf(VERSION));
      return new Head(
          mine ? VERSION : 0,
          texts.getOrDefault("made", ""),
          texts.getOrDefault("session", ""),
          texts.getOrDefault("stamp", ""));
    }
  }
}
