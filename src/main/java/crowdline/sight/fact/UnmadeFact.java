package crowdline.sight.fact;

import org.jspecify.annotations.Nullable;

/**
 * A fact that could not be made of the numbers there are.
 *
 * @param figureId the figure it would be about, or null for the whole act
 * @param why one sentence: which number, and what is wrong with it
 */
public record UnmadeFact(@Nullable String figureId, String why) {}
