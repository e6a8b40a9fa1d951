/**
 * JSON with the line and column of every value, what is wrong with it in plain words, and how it is laid out for people.
 * Jackson is used here and in the packages beside that read and write files, and nowhere else.
 */
@NullMarked
package crowdline.storage.json;

import org.jspecify.annotations.NullMarked;
