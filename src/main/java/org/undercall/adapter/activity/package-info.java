/** Tells speech from other sound, frame by frame. */
package org.undercall.adapter.activity;
