package crowdline.live;

import org.jspecify.annotations.Nullable;

/**
 * How to take back something done by hand.
 *
 * @param what a word for it, such as "next figure"
 * @param course the course before it, or null if it did not change the course
 * @param talk what was said before it, or null if it did not change that
 */
public record TakeBack(
        String what, @Nullable Course course, @Nullable Talk talk) {}
