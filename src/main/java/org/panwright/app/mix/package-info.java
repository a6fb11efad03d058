/**
 * One mix seen large: wet beside dry, in every wash and ratio, with its recipe and its reflectance.
 */
package org.panwright.app.mix;
