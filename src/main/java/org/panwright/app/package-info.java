/**
 * The window: JavaFX, one package a feature. Knows everything; nothing knows it.
 *
 * <p>{@link org.panwright.app.Session} holds what is open and is the only way to change it. Every
 * feature is a view and a model; the model reads the session and knows no control.
 */
package org.panwright.app;
