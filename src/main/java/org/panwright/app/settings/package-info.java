/** What the window remembers from one start to the next. */
package org.panwright.app.settings;
