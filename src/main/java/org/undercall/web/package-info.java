/**
 * Pages that this machine serves to a browser: who may ask, what every answer carries, the fixed
 * files of a page. It knows of no page in particular.
 */
package org.undercall.web;
