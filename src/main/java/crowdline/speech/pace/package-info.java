/**
 * How long a spoken text takes, at one speaker's pace, always with a band.
 *
 * <p>A {@link crowdline.speech.pace.Pace} is a fixed time plus a time per letter, per comma and per inner stop. Letters are
 * counted because they predict the length of a remark better than words or syllables do. All times are in seconds.
 */
@NullMarked
package crowdline.speech.pace;

import org.jspecify.annotations.NullMarked;
