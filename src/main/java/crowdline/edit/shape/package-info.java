/**
 * The shape of a figure as somebody edits it: its elements in words, with what can be told of each and between which
 * numbers. Pure values, whoever shows them.
 */
@NullMarked
package crowdline.edit.shape;

import org.jspecify.annotations.NullMarked;
