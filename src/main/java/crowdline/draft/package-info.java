/**
 * A first draft of what is said in an act: from the glossary's sentences, the predicted flight and what is known of those who
 * fly it, in the time there is. It knows no files and no screens. Nothing is made from what is not known.
 */
@NullMarked
package crowdline.draft;

import org.jspecify.annotations.NullMarked;
