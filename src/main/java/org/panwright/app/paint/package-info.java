/** The paint editor: what is in a tube, how it handles, and how it is predicted to look. */
package org.panwright.app.paint;
