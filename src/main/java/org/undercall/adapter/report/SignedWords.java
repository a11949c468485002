package org.undercall.adapter.report;

/** Who signed the log, with which key and when, as the signer states it. */
final class SignedWords {
  private static final int SHORT = 16;

  private SignedWords() {}

  /** For the first page, in a few words. */
  static String of(Dossier.Seal seal) {
    return seal.signed()
        .map(
            signed ->
                signed.sameLog()
                    ? by(signed)
                        + ", "
                        + Labels.dayAndTime(signed.at())
                        + ", key "
                        + signed.key().substring(0, SHORT)
                    : "an earlier state of the log, not this one")
        .orElse("no");
  }

  /** The same whole, with what it is about. */
  static String whole(Dossier.Seal seal) {
    return seal.signed()
        .map(
            signed ->
                "Signed "
                    + by(signed)
                    + " at "
                    + Labels.dayAndTime(signed.at())
                    + " by the clock of the signer's machine, with the key whose public half has"
                    + " the SHA-256 "
                    + signed.key()
                    + (signed.sameLog()
                        ? ", over the log with the SHA-256 above."
                        : ". THAT WAS ANOTHER STATE OF THE LOG: it must be signed again.")
                    + " This is what the signer states; this report did not check the signature.")
        .orElse("No statement of a signer was beside the log when this report was made.");
  }

  private static String by(Dossier.Signed signed) {
    return signed.name().map(name -> "by " + name).orElse("by nobody named");
  }
}
