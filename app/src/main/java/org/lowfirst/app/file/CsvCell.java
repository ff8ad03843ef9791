package org.lowfirst.app.file;

/**
 * One cell of a CSV file.
 *
 * @param text its content without quotes and without spaces at its ends
 * @param place where it stands
 */
public record CsvCell(String text, Place place) {}
