/** Questions, notes and forms before the window: one service gives them owner, theme and keys. */
package org.panwright.app.dialogs;
