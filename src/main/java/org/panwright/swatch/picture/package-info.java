/**
 * Photos and scans: from a file of unknown origin to linear colours, and the perspective in which a
 * flat sheet lies in them.
 *
 * <p>Read in this order: {@link org.panwright.swatch.picture.PictureFile} (the door), {@link
 * org.panwright.swatch.picture.Picture} (pixels), {@link org.panwright.swatch.picture.Homography}
 * (where a sheet lies). What is wrong with a file is a {@link
 * org.panwright.swatch.picture.PictureFault}; its sentence belongs to {@code words}.
 */
package org.panwright.swatch.picture;
