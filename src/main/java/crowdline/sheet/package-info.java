/** Pages for people: running sheets, cue cards, glossary and debrief, as text, for the printer and as PDF. */
@NullMarked
package crowdline.sheet;

import org.jspecify.annotations.NullMarked;
