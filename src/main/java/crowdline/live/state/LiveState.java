package crowdline.live.state;

import crowdline.live.event.LiveEvent;
import crowdline.live.event.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The running show at one moment.
 *
 * @param showTitle title of the open show, or null before one is opened
 * @param day what became of the running order
 * @param course where the aircraft is in its act, and what was flown
 * @param talk what was said
 * @param incidents when the incident page was open; the last one may still be
 * @param listened what the microphone told
 * @param announced which announcements were shown and read out
 * @param whoseTurn who speaks next, as far as keys say
 * @param notes what was written down
 * @param takeBacks what can be taken back, the most recent last
 */
public record LiveState(
        @Nullable String showTitle,
        Day day,
        Course course,
        Talk talk,
        Listened listened,
        List<IncidentSpan> incidents,
        Announced announced,
        WhoseTurn whoseTurn,
        List<Note> notes,
        List<TakeBack> takeBacks) {

    /** Taking back reaches this far; more than anybody remembers, and it bounds memory. */
    static final int MOST_TAKE_BACKS = 20;

    public LiveState {
        incidents = List.copyOf(incidents);
        notes = List.copyOf(notes);
        takeBacks = List.copyOf(takeBacks);
    }

    /** Before a show is opened. */
    public static LiveState initial() {
        return new LiveState(
                null,
                Day.NONE,
                Course.NONE,
                Talk.NONE,
                Listened.NEVER,
                List.of(),
                Announced.NONE,
                WhoseTurn.BY_PLAN,
                List.of(),
                List.of());
    }

    /** Ids of the acts in running order, cancelled ones among them. */
    public List<String> runningOrder() {
        return day.order();
    }

    public Phase phase() {
        return course.phase();
    }

    /** What moves the position at this moment. */
    public Source source() {
        return course.lead().now();
    }

    public @Nullable String actId() {
        return course.actId();
    }

    public @Nullable String variant() {
        return course.variant();
    }

    /** The figure being flown, or null. */
    public @Nullable String figureId() {
        return course.figureId();
    }

    public boolean incidentOpen() {
        return !incidents.isEmpty() && incidents.get(incidents.size() - 1).closedAtS() == null;
    }

    /** True if what is going on must not be left by accident: an act in the air, or an open incident page. */
    public boolean mustNotBeLeft() {
        return course().inTheAir() || incidentOpen();
    }

    /** What became of remarks in this run of the act: what was said in an earlier one may come again. */
    public Talk talkHere() {
        return new Talk(
                talk.speaking(),
                talk.entries().stream().filter(this::isOfThisRun).toList());
    }

    public boolean isOfThisRun(RemarkEntry entry) {
        return Objects.equals(entry.actId(), actId()) && entry.endedAtS() > course.earlierRunEndS();
    }

    /** True once the show was ended; nothing of it needs to be resumed. */
    public boolean over() {
        return course.phase() instanceof Phase.ShowDone;
    }

    /** What was done by hand and {@link LiveEvent.Undone} would take back now. */
    public Optional<LiveEvent> takeBack() {
        return takeBacks.isEmpty() || !takeBacks.get(takeBacks.size() - 1).isPossible()
                ? Optional.empty()
                : Optional.of(takeBacks.get(takeBacks.size() - 1).event());
    }

    /** True if an act of this id is over. */
    public boolean flown(String actId) {
        return course.flownActs().stream().anyMatch(a -> a.actId().equals(actId));
    }

    /** True if an act of this id is over or in the air. */
    public boolean hasBegun(String actId) {
        return flown(actId) || (actId.equals(actId()) && course.inTheAir());
    }

    /** True if an act of this id may begin yet: it has not, or was chosen to be flown again. */
    public boolean isStillToCome(String actId) {
        return !hasBegun(actId) || (actId.equals(actId()) && course.isWaiting());
    }

    /** The first act in running order that is neither over nor chosen now, nor cancelled. */
    public Optional<String> nextActId() {
        return runningOrder().stream()
                .filter(id -> !flown(id) && !id.equals(actId()) && !day.isCancelled(id))
                .findFirst();
    }

    LiveState withShow(String title, Day next) {
        return new LiveState(title, next, course, talk, listened, incidents, announced, whoseTurn, notes, takeBacks);
    }

    LiveState withDay(Day next) {
        return new LiveState(
                showTitle, next, course, talk, listened, incidents, announced, whoseTurn, notes, takeBacks);
    }

    LiveState withCourse(Course next) {
        return new LiveState(showTitle, day, next, talk, listened, incidents, announced, whoseTurn, notes, takeBacks);
    }

    LiveState withTalk(Talk next) {
        return new LiveState(showTitle, day, course, next, listened, incidents, announced, whoseTurn, notes, takeBacks);
    }

    LiveState withListened(Listened next) {
        return new LiveState(showTitle, day, course, talk, next, incidents, announced, whoseTurn, notes, takeBacks);
    }

    LiveState withIncidents(List<IncidentSpan> next) {
        return new LiveState(showTitle, day, course, talk, listened, next, announced, whoseTurn, notes, takeBacks);
    }

    LiveState withAnnounced(Announced next) {
        return new LiveState(showTitle, day, course, talk, listened, incidents, next, whoseTurn, notes, takeBacks);
    }

    LiveState withWhoseTurn(WhoseTurn next) {
        return new LiveState(showTitle, day, course, talk, listened, incidents, announced, next, notes, takeBacks);
    }

    LiveState withNotes(List<Note> next) {
        return new LiveState(showTitle, day, course, talk, listened, incidents, announced, whoseTurn, next, takeBacks);
    }

    LiveState withTakeBacks(List<TakeBack> next) {
        return new LiveState(showTitle, day, course, talk, listened, incidents, announced, whoseTurn, notes, next);
    }

    LiveState plusTakeBack(TakeBack more) {
        List<TakeBack> next = new ArrayList<>(takeBacks);
        next.add(more);
        return withTakeBacks(
                next.size() > MOST_TAKE_BACKS ? next.subList(next.size() - MOST_TAKE_BACKS, next.size()) : next);
    }
}
