package crowdline.show;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Outline;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.bounds.Most;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Remark;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One event day.
 *
 * @param title of the event
 * @param date of the day
 * @param venue where
 * @param air the air of the day
 * @param airframes every aircraft the acts use, computed and timed
 * @param performers everybody who flies
 * @param acts in running order
 * @param remarks what can be said at any time of the day
 * @param figures the show's own catalogue entries; one with the name of a shipped entry replaces it
 * @param terms the show's own words and wording; one with the name of a shipped term replaces it
 * @param sayAs how to say names and words: as written, as spoken
 * @param incident the organiser's words for when something goes wrong, or null if there are none yet
 * @param announcements the organiser's words for other occasions that nobody can plan
 * @param gaps what the gaps between acts are filled with
 * @param speakers who speaks to the crowd
 */
public record Show(
        String title,
        LocalDate date,
        Venue venue,
        DayAir air,
        List<Aircraft> airframes,
        List<Performer> performers,
        List<Act> acts,
        List<Remark> remarks,
        List<CatalogueEntry> figures,
        List<Term> terms,
        Map<String, String> sayAs,
        @Nullable Incident incident,
        List<Announcement> announcements,
        Gaps gaps,
        Speakers speakers) {

    /** An act so much earlier by the clock than the one before it is after midnight; half a day tells it from a slip. */
    private static final Duration PAST_MIDNIGHT = Duration.ofHours(12);

    /** No act comes so much later than planned. */
    private static final Duration AFTER_ITS_SLOT = Duration.ofHours(6);

    /**
     * When the slot of an act begins by the clocks of the venue: on the show's date, and on the day after from where the
     * running order has passed midnight.
     */
    public LocalDateTime slotStart(Act act) {
        LocalDate day = date;
        LocalTime before = null;
        for (Act next : acts) {
            if (before != null && Duration.between(next.slotStart(), before).compareTo(PAST_MIDNIGHT) > 0) {
                day = day.plusDays(1);
            }
            before = next.slotStart();
            if (next.id().equals(act.id())) {
                break;
            }
        }
        return day.atTime(act.slotStart());
    }

    /**
     * When the clocks of the venue show an hour of the day: one that is half a day before the first slot is after midnight,
     * as slots have it.
     */
    public LocalDateTime onTheDay(LocalTime hour) {
        LocalDateTime at = date.atTime(hour);
        boolean pastMidnight =
                !acts.isEmpty() && Duration.between(at, slotStart(acts.get(0))).compareTo(PAST_MIDNIGHT) > 0;
        return pastMidnight ? at.plusDays(1) : at;
    }

    /** True of a moment on the day of the show, which goes on past midnight for some hours after its last slot. */
    public boolean isOn(Instant moment) {
        LocalDateTime at = LocalDateTime.ofInstant(moment, venue.timeZone());
        LocalDateTime end = date.plusDays(1).atStartOfDay();
        for (Act act : acts) {
            LocalDateTime late = slotStart(act).plus(AFTER_ITS_SLOT);
            end = late.isAfter(end) ? late : end;
        }
        return !at.isBefore(date.atStartOfDay()) && at.isBefore(end);
    }

    public Show {
        Most.mustBeText("show title", title);
        Most.AIRFRAMES.must(airframes);
        Most.PERFORMERS.must(performers);
        Most.ACTS.must(acts);
        Most.REMARKS.must(remarks);
        Most.FIGURES.must(figures);
        Most.TERMS.must(terms);
        Most.SAY_AS.must(sayAs);
        airframes = List.copyOf(airframes);
        performers = List.copyOf(performers);
        acts = List.copyOf(acts);
        remarks = List.copyOf(remarks);
        figures = List.copyOf(figures);
        terms = List.copyOf(terms);
        Most.ANNOUNCEMENTS.must(announcements);
        sayAs = Map.copyOf(sayAs);
        announcements = List.copyOf(announcements);
    }

    /** A show of which no more is known; {@code with…} makes of it one of which there is. */
    public Show(
            String title,
            LocalDate date,
            Venue venue,
            DayAir air,
            List<Aircraft> airframes,
            List<Performer> performers,
            List<Act> acts,
            List<Remark> remarks) {
        this(
                title,
                date,
                venue,
                air,
                airframes,
                performers,
                acts,
                remarks,
                List.of(),
                List.of(),
                Map.of(),
                null,
                List.of(),
                Gaps.NONE,
                Speakers.NONE);
    }

    /** The same with other entries of its own in the glossary. */
    public Show withGlossary(List<CatalogueEntry> otherFigures, List<Term> otherTerms) {
        return with(copy -> {
            copy.figures = otherFigures;
            copy.terms = otherTerms;
        });
    }

    /** The same show in other air. */
    public Show withAir(DayAir other) {
        return with(copy -> copy.air = other);
    }

    /** The remarks of the show, the parts of its pieces, then the remarks of each act, its own before those of its figures. */
    public Stream<Remark> everyRemark() {
        return Stream.concat(
                Stream.concat(remarks.stream(), gaps.remarks()), acts.stream().flatMap(Show::remarksOf));
    }

    /** The remarks of an act, its own before those of its figures; every remark of the show if it is null. */
    public Stream<Remark> everyRemarkOf(@Nullable String actId) {
        return actId == null
                ? everyRemark()
                : acts.stream().filter(act -> act.id().equals(actId)).flatMap(Show::remarksOf);
    }

    private static Stream<Remark> remarksOf(Act act) {
        return Stream.concat(
                act.remarks().stream(), act.figures().stream().flatMap(figure -> figure.remarks().stream()));
    }

    /** Every remark by its id. */
    public Map<String, Remark> remarksById() {
        Map<String, Remark> byId = new HashMap<>();
        everyRemark().forEach(remark -> byId.put(remark.id(), remark));
        return byId;
    }

    /** The ids of every remark, in a set of the caller's own. */
    public Set<String> remarkIds() {
        return everyRemark().map(Remark::id).collect(Collectors.toCollection(HashSet::new));
    }

    public Optional<Act> act(String id) {
        return acts.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    public Optional<Aircraft> aircraft(String id) {
        return airframes.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /** The aircraft of that id, if its figures are computed. */
    public Optional<Airframe> airframe(String id) {
        return aircraft(id).filter(Airframe.class::isInstance).map(Airframe.class::cast);
    }

    /** What shape the aircraft of an act has; one pair of wings where nothing is known of it. */
    public Outline outline(Act act) {
        return airframe(act.airframe()).map(Airframe::outline).orElse(Outline.MONOPLANE);
    }

    public Optional<Performer> performer(String id) {
        return performers.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /**
     * Whether an act can be predicted: what flies it is there, it says where it begins or how long all of it lasts, and none of
     * its variants flies a figure twice.
     */
    public boolean canBePredicted(Act act) {
        Aircraft aircraft = aircraft(act.airframe()).orElse(null);
        boolean timed = act.figures().stream().allMatch(figure -> figure.durationS() != null);
        boolean known = aircraft instanceof TimedAircraft || (aircraft != null && (act.entry() != null || timed));
        return known && act.variants().stream().allMatch(Variant::fliesEachOnce);
    }

    /** What the venue does not say and what is left out for it, in a sentence; empty if it says everything. */
    public Optional<String> leftOut() {
        return LeftOut.sentence(this);
    }

    /** The same with other performers. */
    public Show withPerformers(List<Performer> other) {
        return with(copy -> copy.performers = other);
    }

    /** The same with other aircraft. */
    public Show withAircraft(List<Aircraft> other) {
        return with(copy -> copy.airframes = other);
    }

    /** The same at another place, or with more known of it. */
    public Show withVenue(Venue other) {
        return with(copy -> copy.venue = other);
    }

    /** The same with names and words said otherwise. */
    public Show withSayAs(Map<String, String> other) {
        return with(copy -> copy.sayAs = other);
    }

    /** The same with other words for when something goes wrong. */
    public Show withIncident(@Nullable Incident other) {
        return with(copy -> copy.incident = other);
    }

    /** The same with other words for occasions that nobody can plan. */
    public Show withAnnouncements(List<Announcement> other) {
        return with(copy -> copy.announcements = other);
    }

    /** The same with its gaps filled otherwise. */
    public Show withGaps(Gaps other) {
        return with(copy -> copy.gaps = other);
    }

    /** The same with others who speak. */
    public Show withSpeakers(Speakers other) {
        return with(copy -> copy.speakers = other);
    }

    /** The announcement with this id. */
    public Optional<Announcement> announcement(String id) {
        return announcements.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /** The same on another day, or called otherwise. */
    public Show called(String otherTitle, LocalDate otherDate) {
        return with(copy -> {
            copy.title = otherTitle;
            copy.date = otherDate;
        });
    }

    /** The same with this act in place of the one with its id. */
    public Show withAct(Act act) {
        return withActs(
                acts.stream().map(a -> a.id().equals(act.id()) ? act : a).toList(), remarks);
    }

    /** The same with other acts, and other remarks outside them. */
    public Show withActs(List<Act> otherActs, List<Remark> otherRemarks) {
        return with(copy -> {
            copy.acts = otherActs;
            copy.remarks = otherRemarks;
        });
    }

    private Show with(Consumer<ShowCopy> change) {
        ShowCopy copy = new ShowCopy(this);
        change.accept(copy);
        return copy.made();
    }
}
