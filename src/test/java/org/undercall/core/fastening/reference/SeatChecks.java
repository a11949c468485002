package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.SeatMaterial;
import org.undercall.core.fastening.ThreadCatalogue;

/** What a seat bears, how wide it is, and how much it rubs. */
final class SeatChecks {
  private static final Map<String, SeatMaterial> MATERIALS =
      Map.ofEntries(
          entry("USt 37-2 (S235 JRG1)", SeatMaterial.S235),
          entry("S235JR", SeatMaterial.S235),
          entry("St 50-2 (E295)", SeatMaterial.E295),
          entry("St 52-3U (S355 JO)", SeatMaterial.S355),
          entry("Cq 45", SeatMaterial.C45),
          entry("C45 quenched and tempered", SeatMaterial.C45),
          entry("34 CrMo 4", SeatMaterial.STEEL_34CRMO4),
          entry("34 CrNiMo 6", SeatMaterial.STEEL_34CRNIMO6),
          entry("16 MnCr 5", SeatMaterial.STEEL_16MNCR5),
          entry("16MnCr5", SeatMaterial.STEEL_16MNCR5),
          entry("X5 CrNi 18 12", SeatMaterial.STAINLESS_1_4303),
          entry("X5 CrNiMo 17 12 2", SeatMaterial.STAINLESS_1_4401),
          entry("GG-25 (GJL-250)", SeatMaterial.GJL_250),
          entry("GGG-40 (GJS-400-15)", SeatMaterial.GJS_400),
          entry("GGG-50 (GJS-500-7)", SeatMaterial.GJS_500),
          entry("GGG-60 (GJS-600-3)", SeatMaterial.GJS_600),
          entry("AlMgSi 1 F31 (AW-6082)", SeatMaterial.AW_6082),
          entry("AlMg4.5Mn F27 (AW-5083)", SeatMaterial.AW_5083),
          entry("AlZnMgCu 1.5 (AW-7075)", SeatMaterial.AW_7075),
          entry("GK-AlSi9Cu3", SeatMaterial.SAND_CAST_ALSI9CU3),
          entry("GD-AlSi9Cu3", SeatMaterial.DIE_CAST_ALSI9CU3),
          entry("AZ 91", SeatMaterial.AZ91),
          entry("TiAl6V4", SeatMaterial.TIAL6V4));

  private static final Bolt ANY = Bolt.hexagon("M10", "8.8");
  private static final Friction NONE = Friction.of(1e-12);

  private SeatChecks() {}

  static RowUse pressure(CSVRecord row) {
    if (row.get("edition").equals("VDI 2230:1986")) {
      return RowUse.left(row, "the edition of 1986, of lower pressures");
    }
    String name = row.get("material");
    return switch (name) {
      case "S235", "GJS-400", "GJL-250", "EN AW-6082" ->
          RowUse.left(row, "a second reading of the table that is lower than the first");
      default ->
          Optional.ofNullable(MATERIALS.get(name))
              .map(m -> RowUse.checked(row, Group.SEAT_LIMIT, name, m.limit().megapascals()))
              .orElseGet(() -> RowUse.left(row, "a material that the program does not have"));
    };
  }

  static RowUse size(CSVRecord row) {
    String thread = row.get("thread");
    if (thread.equals("M14") && !row.get("standard").equals("ISO 7040")) {
      return RowUse.left(row, "a hexagon of 22 mm on M14, where the standard has 21 mm");
    }
    return ThreadCatalogue.find(thread)
        .flatMap(Seat::hexagon)
        .map(
            seat ->
                RowUse.checked(
                    row,
                    Group.SEAT_SIZE,
                    thread + " " + row.get("standard"),
                    seat.bearing().millimetres()))
        .orElseGet(() -> RowUse.left(row, "a thread outside M4 to M24"));
  }

  static RowUse friction(CSVRecord row) {
    return switch (row.get("id")) {
      case "16-1" -> friction(row, flat(20, 10).frictionDiameter().millimetres() / 15);
      case "16-2" -> friction(row, flat(20, 10).frictionDiameter().millimetres() / 2 / 30);
      case "16-4" -> friction(row, torque(flat(200, 100), 15707.963268) * 1000);
      case "16-10" -> friction(row, axial(Seat.cone(300, 270, 25), 30e6 / (Math.PI * 500 / 30)));
      case "16-13" -> friction(row, axial(Seat.cone(177.286843, 159.085754, 25), spinUp()));
      case "16-6" ->
          RowUse.left(row, "uniform pressure on a ring, where VDI 2230 has uniform wear");
      default -> others(row);
    };
  }

  private static RowUse others(CSVRecord row) {
    String unit = row.get("unit");
    if (row.get("seat").startsWith("ball")) {
      return ball(row);
    }
    if (row.get("seat").startsWith("cone, DIN") || (unit.equals("lbf.ft") && wheel(row))) {
      return RowUse.input(row);
    }
    if (unit.equals("N.m") && wheel(row)) {
      return PrintedTwice.use(row, PrintedTwice.before("16_conical_ball_wheel", row));
    }
    return RowUse.left(row, "the size of a clutch, which the program does not compute");
  }

  private static boolean wheel(CSVRecord row) {
    return row.get("quantity").startsWith("wheel nut torque");
  }

  private static RowUse friction(CSVRecord row, double ours) {
    return RowUse.checked(row, Group.SEAT_FRICTION, row.get("quantity"), ours);
  }

  private static Seat flat(double outer, double inner) {
    return Seat.of(outer, inner);
  }

  /** The torque in N·m that a seat takes at friction 0.2. */
  private static double torque(Seat seat, double newtons) {
    LongForm form = LongForm.of(ANY.with(seat));
    double whole = form.torque(new Force(newtons), NONE, Friction.of(0.2)).inNewtonMetres();
    return whole - form.torque(new Force(newtons), NONE, NONE).inNewtonMetres();
  }

  /** The force in newtons that a seat needs for a torque in N·mm at friction 0.2. */
  private static double axial(Seat seat, double torque) {
    return torque / 1000 / torque(seat, 1);
  }

  /** 150 kg of radius of gyration 0.25 m brought to 1440 revolutions a minute in 40 s, in N·mm. */
  private static double spinUp() {
    return 150 * 0.25 * 0.25 * (1440 * Math.PI / 30) / 40 * 1000;
  }

  /** A ball washer on its cone, which DIN 6319 has at 120 degrees (recalled). */
  private static RowUse ball(CSVRecord row) {
    String size = row.get("quantity").replaceFirst(".* (M[0-9]+)$", "$1");
    OptionalDouble inner =
        Rows.of("16_conical_ball_wheel").stream()
            .filter(r -> r.get("quantity").equals("inner diameter of the conical seat " + size))
            .mapToDouble(r -> Rows.number(r, "value"))
            .findFirst();
    if (inner.isEmpty()) {
      return RowUse.left(row, "a ball without the size of its cone beside it");
    }
    Matcher outer = Pattern.compile(".*d5 ([0-9.]+) mm").matcher(row.get("inputs"));
    if (!outer.matches()) {
      throw new IllegalStateException(row.get("inputs"));
    }
    double width = Double.parseDouble(outer.group(1));
    Seat seat = Seat.ball(width, inner.getAsDouble(), Rows.number(row, "value"));
    Check.Citation recalled = new Check.Citation("DIN 6319, angle of the cone", Basis.RECALLED);
    String what = row.get("id") + " whole angle under the ball of " + size;
    return RowUse.checked(
        row, Check.of(Group.SEAT_FRICTION, what, 120, 2 * seat.half().degrees(), recalled));
  }
}
