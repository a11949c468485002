/** Takes the program's own voice out of what the microphone hears. */
package org.undercall.adapter.echo;
