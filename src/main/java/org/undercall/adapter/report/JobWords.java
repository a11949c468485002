package org.undercall.adapter.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.term.Job;
import org.undercall.core.term.Vin;

/** Which car, which job and who, in words; what was not given says so. */
final class JobWords {
  private static final String NOT_GIVEN = "not given";

  private JobWords() {}

  /** Each with its name, in the order in which they are shown. */
  static Map<String, String> of(Job job) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Registration", text(job.registration()));
    words.put("VIN", text(job.vin().map(JobWords::vin)));
    words.put("Odometer", text(job.odometer().map(Object::toString)));
    words.put("Job number", text(job.number()));
    words.put("Technician", text(job.technician()));
    return words;
  }

  private static String vin(Vin vin) {
    return vin.checkDigitFits() ? vin + ", check digit fits" : vin + ", check digit does not fit";
  }

  private static String text(Optional<String> given) {
    return given.orElse(NOT_GIVEN);
  }
}
