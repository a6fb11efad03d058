/**
 * Tables in text files of unknown origin, before anyone asks what they mean.
 *
 * <p>Read in this order: {@link org.panwright.swatch.table.FileText} (bytes to text), {@link
 * org.panwright.swatch.table.DelimitedText} (text to cells), {@link
 * org.panwright.swatch.table.RawTable} (cells in rows of one width). What is wrong with a table is
 * a {@link org.panwright.swatch.table.TableFault}; its sentence belongs to {@code words}.
 */
package org.panwright.swatch.table;
