package org.undercall.adapter.log;

import org.undercall.port.Fault;

/** A member of a log line that is absent or does not have its form. */
final class BadMember extends Exception {
  private static final long serialVersionUID = 1L;

  private final String member;
  private final String found;
  private final String expected;

  BadMember(String member, String found, String expected) {
    super(member + ": found " + found + ", expected " + expected);
    this.member = member;
    this.found = found;
    this.expected = expected;
  }

  Fault at(String place) {
    return new Fault(LogCode.BAD_MEMBER, place + " member " + member, found, expected);
  }
}
