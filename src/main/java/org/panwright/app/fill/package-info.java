/**
 * The view of tubes, fill plan, places of paints, and pans.
 *
 * <p>{@link org.panwright.app.fill.FillModel} knows no control; drafts hold what is typed and say
 * what is wrong with it.
 */
package org.panwright.app.fill;
