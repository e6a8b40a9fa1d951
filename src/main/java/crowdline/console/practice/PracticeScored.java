package crowdline.console.practice;

import crowdline.practice.PracticeScore;

/**
 * A practice and what became of it.
 *
 * @param title the act, the level and the seed, in words
 * @param choice what was flown
 */
public record PracticeScored(String title, PracticeChoice choice, PracticeScore score) {}
