/** The frame of the window: menus, top bar, the choice of view, and the plan with its panes. */
package org.panwright.app.window;
