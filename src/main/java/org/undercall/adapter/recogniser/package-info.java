/**
 * Sound in, recognised phrases out: the speech model, checked before it is loaded, and its
 * recognisers.
 */
package org.undercall.adapter.recogniser;
