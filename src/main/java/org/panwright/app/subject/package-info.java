/** The view of a subject: the colours of a place, from a photo or typed, and how to mix them. */
package org.panwright.app.subject;
