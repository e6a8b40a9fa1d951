package crowdline.speech.pace;

import crowdline.show.figure.Translation;

/**
 * A remark as it is said in its other language.
 *
 * @param speaker the name of who says it, or empty if nobody is named
 * @param words in that language
 * @param time how long they take
 */
public record Interpreted(String speaker, Translation words, SpokenTime time) {}
