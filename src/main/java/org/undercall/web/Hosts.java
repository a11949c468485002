package org.undercall.web;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The names by which a browser may call a page of this machine. A page from elsewhere whose name
 * was made to point here still calls it by its own name, and is refused.
 *
 * @param names lower case, an IPv6 address in brackets, none with a port
 * @param port the port they all stand with
 */
public record Hosts(List<String> names, int port) {
  private static final List<String> LOOPBACK =
      List.of("localhost", "127.0.0.1", "[0:0:0:0:0:0:0:1]");

  public Hosts {
    names = List.copyOf(names);
  }

  /** The loopback names. */
  public static Hosts loopback(int port) {
    return new Hosts(LOOPBACK, port);
  }

  /** The loopback names and every address of this machine. */
  public static Hosts ofMachine(int port) throws SocketException {
    Stream<String> own =
        NetworkInterface.networkInterfaces()
            .flatMap(NetworkInterface::inetAddresses)
            .map(Hosts::name);
    return new Hosts(Stream.concat(LOOPBACK.stream(), own).distinct().toList(), port);
  }

  private static String name(InetAddress address) {
    String text = address.getHostAddress().replaceFirst("%.*", "");
    return address instanceof Inet6Address ? "[" + text + "]" : text;
  }

  /** Whether a Host header names this machine and port. */
  public boolean known(String host) {
    String lower = host.toLowerCase(Locale.ROOT);
    return lower.endsWith(":" + port)
        && names.contains(whole(lower.substring(0, lower.lastIndexOf(':'))));
  }

  /** An IPv6 address in its long form, as this machine names its own; any other name as it is. */
  private static String whole(String name) {
    if (!name.startsWith("[") || !name.endsWith("]")) {
      return name;
    }
    try {
      return name(InetAddress.getByName(name));
    } catch (UnknownHostException e) {
      return name;
    }
  }

  /** Whether an Origin header names the page that is served under that host. */
  public static boolean same(String origin, String host) {
    return origin.equalsIgnoreCase("http://" + host);
  }

  /** The addresses to open the page at. */
  public List<String> addresses() {
    return names.stream()
        .filter(name -> !name.startsWith("[fe80"))
        .map(name -> "http://" + name + ":" + port + "/")
        .toList();
  }
}
