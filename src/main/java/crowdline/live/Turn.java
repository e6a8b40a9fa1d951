package crowdline.live;

/** What an event does to the course. */
sealed interface Turn {

    /** The course after it, and a word for what was done, for taking it back. */
    record To(Course course, String what) implements Turn {}

    /** Not possible, and why in one sentence. */
    record No(String reason) implements Turn {}
}
