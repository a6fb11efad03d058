/**
 * A mixing chart painted by hand, read off a picture: which paints its cells hold, each cell beside
 * what all others foretell of it, and what the paints learn from those that agree.
 *
 * <p>Read in this order: {@link org.panwright.app.chart.ChartPlan} (what the painter says), {@link
 * org.panwright.app.chart.ChartModel}, {@link org.panwright.app.chart.ChartSide}.
 */
package org.panwright.app.chart;
