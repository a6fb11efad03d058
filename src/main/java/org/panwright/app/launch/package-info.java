/** Starting the program anew in a JVM that finds its classes ready made. */
package org.panwright.app.launch;
