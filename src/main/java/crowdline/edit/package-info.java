/**
 * A show being edited: changes with names, the steps back and forth, and what is saved. Pure values, whoever shows them.
 */
@NullMarked
package crowdline.edit;

import org.jspecify.annotations.NullMarked;
