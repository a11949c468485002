package org.undercall;

/** The command line entry. */
public final class App {
  private App() {}

  /**
   * Starts the program.
   *
   * @param args the command and its options
   */
  public static void main(String[] args) {
    System.out.println("undercall");
  }
}
