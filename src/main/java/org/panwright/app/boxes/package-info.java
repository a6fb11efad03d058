/** The box editor: a travel box drawn to scale while its sizes and wells are typed or moved. */
package org.panwright.app.boxes;
