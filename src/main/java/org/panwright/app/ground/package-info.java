/** What every coat lies on and how thick it lies: the paper and the wash strengths. */
package org.panwright.app.ground;
