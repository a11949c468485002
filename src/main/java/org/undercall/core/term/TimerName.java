package org.undercall.core.term;

/** What a timer that is started by voice is for. The list is fixed: its words are listened for. */
public enum TimerName {
  /** Sealant that skins over or cures. */
  SEALANT,
  /** Thread locker that sets. */
  THREAD_LOCKER,
  /** A suspension that settles after lowering. */
  SETTLING,
  /** A part that cools down. */
  COOLING,
  /** Penetrating oil that soaks in. */
  SOAKING,
  /** Paint, wax or cleaner that dries. */
  DRYING,
  /** A battery on the charger. */
  BATTERY
}
