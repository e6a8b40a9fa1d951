/**
 * What is explained: the figures of the catalogue and the words of the trade, with a show's own over both, and how they are
 * found.
 */
@NullMarked
package crowdline.glossary;

import org.jspecify.annotations.NullMarked;
