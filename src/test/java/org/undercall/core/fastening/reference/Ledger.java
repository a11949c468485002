package org.undercall.core.fastening.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.ThreadCatalogue;

/** The tables in which every row is accounted for. */
final class Ledger {
  private static final Map<String, Function<CSVRecord, RowUse>> TABLES = tables();
  private static final Map<String, List<RowUse>> ROWS = rows();

  private Ledger() {}

  private static Map<String, Function<CSVRecord, RowUse>> tables() {
    Map<String, Function<CSVRecord, RowUse>> tables = new LinkedHashMap<>();
    tables.put(NutChecks.TABLE, NutChecks::use);
    tables.put("11c_engagement_recommended", EngagementChecks::recommended);
    tables.put("11d_strength_ratio_factors", EngagementChecks::factor);
    tables.put("11e_stripping_examples", EngagementChecks::example);
    tables.put("12a_permitted_pressure", SeatChecks::pressure);
    tables.put("12b_seat_geometry", SeatChecks::size);
    tables.put("13_embedding", EmbeddingChecks::use);
    tables.put("14_friction", FrictionChecks::friction);
    tables.put(Examples.LECTURES, Examples::lecture);
    tables.put("16_conical_ball_wheel", SeatChecks::friction);
    tables.put(PrevailingChecks.TABLE, PrevailingChecks::use);
    tables.put("18_thermal_elongation", ThermalChecks::use);
    tables.put("20_published_joints", Ledger::joint);
    tables.put("21_torque_angle", TensionChecks::use);
    tables.put("22_scatter", FrictionChecks::scatterTable);
    tables.put(Examples.MORE, Examples::more);
    tables.put("24_suspension", ArmChecks::use);
    return tables;
  }

  /** A joint as {@code PublishedJointsTest} takes it. */
  private static RowUse joint(CSVRecord row) {
    if (row.get("thread").isEmpty()) {
      return RowUse.left(row, "a joint whose thread is not printed");
    }
    if (ThreadCatalogue.find(row.get("thread")).isEmpty()) {
      return RowUse.left(row, "a joint of an inch thread, or of one outside M4 to M24");
    }
    return row.get("torque").isEmpty() || row.get("unit").equals("kgf.m")
        ? RowUse.left(row, "a joint without a torque in N·m or pounds")
        : RowUse.judged(row);
  }

  private static Map<String, List<RowUse>> rows() {
    Map<String, List<RowUse>> rows = new LinkedHashMap<>();
    TABLES.forEach((table, use) -> rows.put(table, Rows.of(table).stream().map(use).toList()));
    return rows;
  }

  /** What became of each row, by table. */
  static Map<String, List<RowUse>> all() {
    return ROWS;
  }

  static Stream<Check> checks() {
    return uses(RowUse.Fate.CHECKED).flatMap(use -> use.checks().stream());
  }

  static Stream<RowUse> uses(RowUse.Fate fate) {
    return ROWS.values().stream().flatMap(List::stream).filter(use -> use.fate() == fate);
  }
}
