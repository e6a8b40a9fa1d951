/** What is taken along on paper, made of a loaded show: cards, sheets and pages to sign. */
@NullMarked
package crowdline.paper;

import org.jspecify.annotations.NullMarked;
