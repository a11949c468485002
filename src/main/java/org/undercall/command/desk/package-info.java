/** From the desk to the floor: what can be begun or taken up, the choice, and the first screen. */
package org.undercall.command.desk;
