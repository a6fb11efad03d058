/**
 * How paints look alone, which hue group painters file them under, and how a lineup is made up.
 *
 * <p>Read {@link org.panwright.analysis.balance.Looks}, {@link
 * org.panwright.analysis.balance.HueGroup}, {@link org.panwright.analysis.balance.PaintGroups},
 * then {@link org.panwright.analysis.balance.Balance}.
 */
package org.panwright.analysis.balance;
