/** The check of the ear: ten phrases, what was heard of each, and what to change. */
package org.undercall.command.ear;
