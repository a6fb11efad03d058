/** Recipes for a colour that was clicked or typed. */
package org.panwright.app.recipes;
