/** The findings about the lineup, worst first, each with the one edit that cures it. */
package org.panwright.app.findings;
