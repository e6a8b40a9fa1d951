/**
 * From a written remark to the seconds it takes to say it, and whether a listener will follow it.
 *
 * <p>The way of a text: written text, expanded by {@link crowdline.speech.Spoken} to a
 * {@link crowdline.speech.SpokenText} (numbers, units and abbreviations in words), timed by a
 * {@link crowdline.speech.Pace} as fixed time plus time per letter, per comma and per inner stop. Letters are counted
 * because they predict the length of a remark better than words or syllables do. All times are in seconds, and every
 * time carries a band.
 */
@NullMarked
package crowdline.speech;

import org.jspecify.annotations.NullMarked;
