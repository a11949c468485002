/** The first screen: what can be begun or taken up, and the choice among it. */
package org.undercall.command.front;
