/**
 * What is written as it is said: numbers, units, dates, codes and abbreviations in words.
 *
 * <p>{@link crowdline.speech.say.Spoken} expands a text to a {@link crowdline.speech.say.SpokenText}, which keeps both.
 */
@NullMarked
package crowdline.speech.say;

import org.jspecify.annotations.NullMarked;
