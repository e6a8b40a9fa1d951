package crowdline.live.now;

import org.jspecify.annotations.Nullable;

/**
 * A figure ahead that is not dropped.
 *
 * @param index its place in the variant, from 0
 * @param figureId its id
 * @param inS seconds until it is expected to begin, 0 or more; null if that cannot be known, as off the plan
 */
public record Upcoming(int index, String figureId, @Nullable Double inS) {}
