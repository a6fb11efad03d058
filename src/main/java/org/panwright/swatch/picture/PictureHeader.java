package org.panwright.swatch.picture;

/**
 * What a file says of its picture before any pixel is decoded.
 *
 * @param width in pixels as stored, before turning
 * @param height in pixels as stored
 * @param orientation 1..8 as Exif counts them; 1 is upright
 * @param profile the bytes of an embedded ICC profile, or none
 * @param quality of a JPEG, 1..100 on the usual scale; 100 for a PNG
 */
@SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
record PictureHeader(
    boolean jpeg, long width, long height, int orientation, byte[] profile, int quality) {}
