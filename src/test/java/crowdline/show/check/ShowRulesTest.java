package crowdline.show.check;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.Announcement;
import crowdline.show.DayAir;
import crowdline.show.Incident;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.storage.show.CatalogueFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

public class ShowRulesTest {
    private static final Catalogue CATALOGUE = new Catalogue(List.of(
            entry("loop", List.of(), List.of(new Element.Pivot(Element.Side.LEFT, 1))),
            entry("stall turn", List.of("hammerhead"), List.of(new Element.Pivot(Element.Side.LEFT, 1))),
            entry("landing", List.of(), List.of())));
    private static final Placing ENTRY = new Placing(0, 0, 1500, 120, Placing.Heading.RIGHT);
    private static final Incident INCIDENT = new Incident(
            "display director",
            List.of("Stop talking."),
            List.of("The display has stopped."),
            List.of(new Incident.Contact("Control", "channel 3")));
    private static final Venue.Limits LIMITS = new Venue.Limits(500.0, 4000.0, null, null);
    private static final Remark DUTY = Remark.of("thanks", RemarkKind.DUTY, "Thank the stewards.");
    private static final Variant FULL = new Variant("full", null, List.of("one"));

    public static CatalogueEntry entry(String name, List<String> aliases, List<Element> elements) {
        return new CatalogueEntry(name, aliases, "f", "what", "look", "", "", "", "", "", null, null, null, elements);
    }

    private static Figure figure(String id, String name) {
        Remark call = Remark.of(id + "-call", RemarkKind.CALL, "Here it comes.");
        return new Figure(id, name, null, null, null, null, null, null, List.of(), List.of(call));
    }

    private static Act act(String id, String start, double minutes, List<Figure> figures, List<Variant> variants) {
        return new Act(id, "Ada", "ada", "wren", LocalTime.parse(start), minutes, ENTRY, figures, variants, List.of());
    }

    private static Act act(List<Figure> figures, Variant... variants) {
        return act("solo", "14:00", 10, figures, List.of(variants));
    }

    private static Airframe wren(String id) {
        return new Airframe(
                id,
                "Wren",
                null,
                Engine.NONE,
                600,
                10,
                8,
                7,
                0.02,
                0.05,
                1.4,
                1.2,
                100,
                90,
                200,
                200,
                300,
                2,
                200,
                6,
                -4,
                150);
    }

    private static Show show(
            List<Act> acts,
            List<Remark> remarks,
            List<CatalogueEntry> own,
            Map<String, String> sayAs,
            Venue.Limits limits,
            @Nullable Incident incident) {
        Performer ada = new Performer(
                "ada", "Ada Quillan", null, List.of(new Performer.SourcedFact("She glides.", "her letter")));
        return new Show(
                        "Air day",
                        LocalDate.of(2027, 6, 12),
                        new Venue("Harrowmere", 52, -1, 300, 245, 230, ZoneId.of("Europe/London"), limits),
                        DayAir.STANDARD,
                        List.of(wren("wren")),
                        List.of(ada),
                        acts,
                        remarks)
                .withGlossary(own, List.of())
                .withSayAs(sayAs)
                .withIncident(incident);
    }

    private static List<String> found(Show show) {
        return ShowRules.check(show, CATALOGUE).stream()
                .map(f -> f.severity() + " " + f.code() + " " + f.path() + ": " + f.message())
                .toList();
    }

    private static List<String> foundIn(Act... acts) {
        return found(show(List.of(acts), List.of(DUTY), List.of(), Map.of(), LIMITS, INCIDENT));
    }

    @Test
    void nothingIsFoundInASoundShow() {
        assertThat(foundIn(act(List.of(figure("one", "loop")), FULL))).isEmpty();
    }

    @Test
    void unknownFigureIsNamedWithTheNearest() {
        assertThat(foundIn(act(List.of(figure("one", "lop")), FULL)))
                .containsExactly("ERROR unknown-figure acts[0].figures[0].figure: the figure \"lop\" is not in the"
                        + " catalogue; did you mean \"loop\"?");
        assertThat(foundIn(act(List.of(figure("one", "pirouette")), FULL)))
                .containsExactly(
                        "ERROR unknown-figure acts[0].figures[0].figure: the figure \"pirouette\" is not in the"
                                + " catalogue; name one that is, or add it to the show's own figures");
    }

    @Test
    void aliasesAndOddSpacingAreKnown() {
        assertThat(foundIn(act(List.of(figure("one", "Hammerhead")), FULL))).isEmpty();
        assertThat(foundIn(act(List.of(figure("one", "Stall-Turn")), FULL))).isEmpty();
    }

    @Test
    void figureNeitherSimulatedNorTimedBlocks() {
        assertThat(foundIn(act(List.of(figure("one", "landing")), FULL)))
                .containsExactly(
                        "ERROR figure-without-length acts[0].figures[0]: the figure \"one\" has neither elements"
                                + " to predict it from nor a durationS; give it one of them");
    }

    @Test
    void unknownPerformerAndAirframeAreNamed() {
        Act act = new Act(
                "solo",
                "Ada",
                "adda",
                "heron",
                LocalTime.NOON,
                10,
                ENTRY,
                List.of(figure("one", "loop")),
                List.of(FULL),
                List.of());
        assertThat(foundIn(act))
                .contains(
                        "ERROR unknown-performer acts[0].performer: the performer \"adda\" is not among the show's"
                                + " performers; did you mean \"ada\"?",
                        "ERROR unknown-airframe acts[0].airframe: the airframe \"heron\" is not among the show's"
                                + " airframes; add it to airframes or name one that is there",
                        "NOTE unused-airframe airframes[0]: no act uses the airframe \"wren\"");
    }

    @Test
    void idsMustBeUsedOnce() {
        assertThat(foundIn(act(List.of(figure("one", "loop"), figure("one", "loop")), FULL, FULL)))
                .contains(
                        "ERROR duplicate-id acts[0].figures[1].id: the figure \"one\" is already at"
                                + " acts[0].figures[0].id; each figure needs a name of its own in its act",
                        "ERROR duplicate-id acts[0].figures[1].remarks[0].id: the remark \"one-call\" is already at"
                                + " acts[0].figures[0].remarks[0].id; each remark needs a name of its own in the show",
                        "ERROR duplicate-id acts[0].variants[1].name: the variant \"full\" is already at"
                                + " acts[0].variants[0].name; each variant needs a name of its own in its act");
    }

    @Test
    void variantsFlyFiguresOfTheActOnce() {
        Variant odd = new Variant("odd", null, List.of("one", "onne", "one"));
        assertThat(foundIn(act(List.of(figure("one", "loop")), odd)))
                .containsExactly(
                        "ERROR unknown-figure-id acts[0].variants[0].order[1]: the figure id \"onne\" is not in this"
                                + " act; did you mean \"one\"?",
                        "ERROR figure-twice acts[0].variants[0].order[2]: the variant \"odd\" flies \"one\" twice;"
                                + " give the second time a figure with an id of its own");
    }

    @Test
    void actWithoutFiguresBlocks() {
        assertThat(foundIn(act(List.of(), new Variant("full", null, List.of()))))
                .contains(
                        "ERROR no-figures acts[0].figures: the act \"solo\" has no figure; it needs at least one",
                        "ERROR empty-variant acts[0].variants[0].order: the variant \"full\" flies nothing; list the"
                                + " figures it flies",
                        "WARNING act-without-remarks acts[0]: \"Ada\" has no remarks at all, so there is nothing to"
                                + " say in it");
    }

    @Test
    void figureNoVariantFliesIsNoted() {
        assertThat(foundIn(act(List.of(figure("one", "loop"), figure("two", "loop")), FULL)))
                .containsExactly("NOTE unused-figure acts[0].figures[1]: no variant flies the figure \"two\"");
    }

    @Test
    void cloudBasesMustTellVariantsApart() {
        List<Figure> figures = List.of(figure("one", "loop"));
        Variant high = new Variant("full", 3000.0, List.of("one"));
        Variant same = new Variant("rolling", 3000.0, List.of("one"));
        Variant low = new Variant("flat", 1000.0, List.of("one"));
        Variant none = new Variant("any", null, List.of("one"));
        assertThat(foundIn(act(figures, high, low))).isEmpty();
        assertThat(foundIn(act(figures, high, same)))
                .containsExactly("WARNING variants-alike acts[0].variants[1].minCloudBaseFt: the variants \"full\" and"
                        + " \"rolling\" have the same minCloudBaseFt, 3000.0, so the cloud base cannot choose"
                        + " between them");
        assertThat(foundIn(act(figures, low, high)))
                .containsExactly(
                        "WARNING variants-out-of-order acts[0].variants[1].minCloudBaseFt: the variant \"full\" needs"
                                + " a higher cloud base, 3000.0, than the one before it, 1000.0; put the highest first");
        assertThat(foundIn(act(figures, high, none)))
                .containsExactly("WARNING variant-without-cloud-base acts[0].variants[1]: the variant \"any\" has no"
                        + " minCloudBaseFt, so the cloud base cannot choose between it and the others");
    }

    @Test
    void overlappingSlotsAreFoundWhateverTheirOrder() {
        Act long1 = act("long", "14:00", 40, List.of(figure("one", "loop")), List.of(FULL));
        Act mid =
                act("mid", "14:05", 5, List.of(figure("two", "loop")), List.of(new Variant("f", null, List.of("two"))));
        Act late = act(
                "late", "14:30", 5, List.of(figure("six", "loop")), List.of(new Variant("f", null, List.of("six"))));
        assertThat(foundIn(long1, mid, late))
                .containsExactly(
                        "WARNING slots-overlap acts[1].slotStart: \"Ada\" begins at 14:05, before \"Ada\" of 14:00 ends at"
                                + " 14:40; move one of them",
                        "WARNING slots-overlap acts[2].slotStart: \"Ada\" begins at 14:30, before \"Ada\" of 14:00 ends at"
                                + " 14:40; move one of them");
        assertThat(foundIn(late, mid))
                .containsExactly(
                        "WARNING acts-out-of-order acts[1].slotStart: the act \"Ada\" begins before the one listed"
                                + " ahead of it; list acts in running order");
    }

    @Test
    void backToBackSlotsDoNotOverlap() {
        Act first = act("first", "14:00", 5, List.of(figure("one", "loop")), List.of(FULL));
        Act next = act(
                "next", "14:05", 5, List.of(figure("two", "loop")), List.of(new Variant("f", null, List.of("two"))));
        assertThat(foundIn(first, next)).isEmpty();
    }

    @Test
    void incidentPageMustBeThereAndAgreed() {
        Act act = act(List.of(figure("one", "loop")), FULL);
        assertThat(found(show(List.of(act), List.of(DUTY), List.of(), Map.of(), LIMITS, null)))
                .containsExactly("ERROR no-incident-page : the show has no incident page; start from what crowdline"
                        + " incident-template prints, put your own words in, and agree them with the display director");
        Incident bare = new Incident(null, List.of(), List.of("Words."), List.of());
        assertThat(found(show(List.of(act), List.of(DUTY), List.of(), Map.of(), LIMITS, bare)))
                .containsExactly(
                        "WARNING incident-not-agreed incident: the incident page is not agreed with anyone; agree it"
                                + " with the display director and write who and when into agreedWith",
                        "WARNING incident-without-steps incident: the incident page does not say what to do first; add"
                                + " firstSteps",
                        "WARNING incident-without-contacts incident: the incident page names nobody to reach; add"
                                + " contacts");
    }

    @Test
    void announcementsMustBeAgreedAndTheirBracketsBelongTogether() {
        Act act = act(List.of(figure("one", "loop")), FULL);
        Show show = show(List.of(act), List.of(DUTY), List.of(), Map.of(), LIMITS, INCIDENT)
                .withAnnouncements(List.of(
                        new Announcement("fog", "Fog", List.of("Wait until [time]."), "Ada, 2 May"),
                        new Announcement("fog", "Lost child", List.of("At [where."), null)));
        assertThat(found(show))
                .containsExactlyInAnyOrder(
                        "ERROR duplicate-id announcements[1].id: the announcement \"fog\" is already at"
                                + " announcements[0].id; each announcement needs a name of its own in the show",
                        "WARNING announcement-not-agreed announcements[1]: the announcement \"Lost child\" is not"
                                + " agreed with anyone; agree it with the organiser and write who and when into"
                                + " agreedWith",
                        "WARNING announcement-with-a-loose-bracket announcements[1].words: the announcement \"Lost"
                                + " child\" has a square bracket that belongs to no other, or nothing between two; write"
                                + " what is to be filled in between [ and ]");
    }

    @Test
    void whatIsMissingForSpeakingIsNoted() {
        Figure silent = Figure.of("one", "loop");
        Remark fact = Remark.of("fact", RemarkKind.FACT, "It is round.");
        Figure uncalled = new Figure("two", "loop", null, null, null, null, null, null, List.of(), List.of(fact));
        Act act = act(List.of(silent, uncalled), new Variant("full", null, List.of("one", "two")));
        Remark timed = new Remark("filler", RemarkKind.FILLER, "Well.", null, 1.0, null, 1, false);
        assertThat(found(show(
                        List.of(act), List.of(timed), List.of(), Map.of("Zed", "zee"), Venue.Limits.NONE, INCIDENT)))
                .containsExactly(
                        "NOTE no-limits venue: no limits are given, so no figure is checked against any; enter those"
                                + " the display director gave you",
                        "NOTE figure-without-remarks acts[0].figures[0]: \"Loop\" has no remarks; Live has only the"
                                + " catalogue's sentence for it",
                        "NOTE figure-without-call acts[0].figures[1].remarks: \"Loop\" has no call",
                        "NOTE time-without-figure remarks[0]: the remark \"filler\" belongs to no figure, so its at,"
                                + " until, earliestS and latestS mean nothing",
                        "NOTE no-duties remarks: no remark is a duty; if somebody must be thanked or told something"
                                + " today, mark that remark as one",
                        "NOTE unused-say-as sayAs: \"Zed\" has a way to say it but occurs nowhere in the show");
    }

    @Test
    void whatIsNamedAsItBeginsNeedsNoCall() {
        Remark named = Remark.of("named", RemarkKind.EXPLANATION, "This is another loop.");
        Figure loop = new Figure("one", "loop", null, null, null, null, null, null, List.of(), List.of(named));
        Show show = show(List.of(act(List.of(loop), FULL)), List.of(DUTY), List.of(), Map.of(), LIMITS, INCIDENT);
        assertThat(ShowRules.check(show, CatalogueFile.shipped()))
                .noneMatch(finding -> finding.code().equals("figure-without-call"));
    }

    /** A landing is seen by everybody, and on the way to the next figure there is nothing to look for. */
    @Test
    void whatComesGoesOrIsOnTheWayNeedsNoCall() {
        Remark fact = Remark.of("fact", RemarkKind.FACT, "It is green.");
        for (String name : List.of("landing", "take-off", "join-up", "reposition", "loop")) {
            Figure uncalled = new Figure("one", name, null, null, null, null, null, null, List.of(), List.of(fact));
            Act act = act(List.of(uncalled), FULL);
            Show show = show(List.of(act), List.of(DUTY), List.of(), Map.of(), LIMITS, INCIDENT);
            assertThat(ShowRules.check(show, CatalogueFile.shipped()))
                    .as(name)
                    .filteredOn(finding -> finding.code().equals("figure-without-call"))
                    .hasSize(name.equals("loop") ? 1 : 0);
        }
    }

    @Test
    void ceilingBelowTheBaseBlocks() {
        Act act = act(List.of(figure("one", "loop")), FULL);
        Venue.Limits crossed = new Venue.Limits(1000.0, 900.0, null, null);
        assertThat(found(show(List.of(act), List.of(DUTY), List.of(), Map.of(), crossed, INCIDENT)))
                .containsExactly(
                        "ERROR limits-crossed venue.limits.ceilingFt: the ceilingFt is 900.0; it must be above the"
                                + " baseFt, 1000.0");
    }

    @Test
    void twoOwnEntriesCannotShareAName() {
        Act act = act(List.of(figure("one", "loop")), FULL);
        List<CatalogueEntry> own =
                List.of(entry("wheel", List.of(), List.of()), entry("round", List.of("Wheel"), List.of()));
        assertThat(found(show(List.of(act), List.of(DUTY), own, Map.of(), LIMITS, INCIDENT)))
                .containsExactly(
                        "ERROR name-claimed-twice figures[1]: the figure name \"Wheel\" is claimed by \"wheel\" and"
                                + " by \"round\"; only one of them can have it");
    }
}
