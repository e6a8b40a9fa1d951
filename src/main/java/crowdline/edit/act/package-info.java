/**
 * Edits of the acts of a show and of their figures. An act that was laid out is laid out again after each; what a person
 * wrote about a figure stays with it.
 */
@NullMarked
package crowdline.edit.act;

import org.jspecify.annotations.NullMarked;
