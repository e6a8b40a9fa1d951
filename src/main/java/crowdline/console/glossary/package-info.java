/**
 * The Glossary place: every figure explained, with search.
 */
@NullMarked
package crowdline.console.glossary;

import org.jspecify.annotations.NullMarked;
