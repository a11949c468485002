/** Sound clips of what was said, as files in the session's folder. */
package org.undercall.adapter.clips;
