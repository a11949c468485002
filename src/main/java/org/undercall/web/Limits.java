package org.undercall.web;

import java.util.Map;

/** Limits of the Java library's own server, which it reads once from properties of the machine. */
public final class Limits {
  private static final Map<String, String> PROPERTIES =
      Map.of(
          "sun.net.httpserver.maxReqHeaders", "64",
          "sun.net.httpserver.maxReqHeaderSize", "16384",
          "sun.net.httpserver.maxReqTime", "10",
          "sun.net.httpserver.idleInterval", "30",
          "sun.net.httpserver.maxIdleConnections", "32",
          "sun.net.httpserver.drainAmount", "4096",
          "jdk.httpserver.maxConnections", "96");

  private Limits() {}

  /** Sets each that is not set; has no effect after the first server was made. */
  public static void set() {
    PROPERTIES.forEach(
        (name, value) -> {
          if (System.getProperty(name) == null) {
            System.setProperty(name, value);
          }
        });
  }
}
