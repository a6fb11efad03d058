/** Laying a lineup into the wells of its box, with a preview and as one edit. */
package org.panwright.app.arrange;
