package crowdline.live.state;

/** What an event does to the course. */
sealed interface Turn {

    /** The course after it. */
    record To(Course course) implements Turn {}

    /** Not possible, and why in one sentence. */
    record No(String reason) implements Turn {}

    /** Not possible, as the act is over. */
    record Over() implements Turn {}
}
