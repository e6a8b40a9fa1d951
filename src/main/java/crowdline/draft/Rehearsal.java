package crowdline.draft;

import crowdline.patter.Candidate;
import crowdline.patter.PatterRules;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Planner;
import crowdline.patter.Slot;
import crowdline.patter.SpokenLength;
import crowdline.patter.Unplaced;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.say.Spoken;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Plans what was drafted as it will be planned on the day, and leaves out what finds no place. */
final class Rehearsal {
    /** Each round leaves something out; after so many what is left is handed over as it is. */
    private static final int MOST_ROUNDS = 4;
    /** How far a figure is likely off its time either way, as a share: nobody has varied the flight yet. */
    private static final double BAND = 0.06;

    private static final double LEAST_S = 0.1;

    private final Show show;
    private final Act act;
    private final List<Slot> slots;
    private final Pace pace;
    private final Spoken spoken;
    private final Map<String, SpokenLength> lengths = new HashMap<>();

    Rehearsal(Show show, Act act, List<Scene> scenes, Pace pace) {
        this.show = show;
        this.act = act;
        this.pace = pace;
        spoken = new Spoken(show.sayAs());
        slots = scenes.stream()
                .map(s -> new Slot(
                        s.figure().id(),
                        s.flown().startS(),
                        s.flown().endS(),
                        s.flown().endS() - BAND * s.durationS(),
                        s.flown().endS() + BAND * s.durationS(),
                        s.figure().quiets(),
                        s.seen()))
                .toList();
    }

    /** The act with the drafts that have a place; what a person wrote stays in any case. */
    Act kept() {
        Act kept = act;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Set<String> out = plan(kept).unplaced().stream()
                    .map(Unplaced::remarkId)
                    .collect(Collectors.toCollection(HashSet::new));
            Act next = without(kept, out);
            if (next.equals(kept)) {
                return kept;
            }
            kept = next;
        }
        return kept;
    }

    private static Act without(Act act, Set<String> ids) {
        return act.withFigures(
                act.figures().stream()
                        .map(f -> f.withRemarks(f.remarks().stream()
                                .filter(r -> !r.draft() || r.kind() == RemarkKind.CALL || !ids.contains(r.id()))
                                .toList()))
                        .toList(),
                act.remarks());
    }

    private Plan plan(Act of) {
        List<Candidate> candidates = new ArrayList<>();
        for (Slot slot : slots) {
            of.figure(slot.figureId()).stream()
                    .flatMap(f -> f.remarks().stream())
                    .forEach(r -> candidates.add(candidate(r, slot.figureId())));
        }
        of.remarks().forEach(r -> candidates.add(candidate(r, null)));
        show.remarks().forEach(r -> candidates.add(candidate(r, null)));
        return new Planner()
                .plan(new PlanRequest(
                        slots.get(0).startS() - PatterRules.DEFAULT.callStartsAtMostBeforeS(),
                        slots,
                        candidates,
                        Set.of(),
                        Optional.empty(),
                        null,
                        PatterRules.DEFAULT));
    }

    private Candidate candidate(Remark remark, @Nullable String figureId) {
        String shorter = remark.shortText();
        return new Candidate(remark, figureId, length(remark.text()), shorter == null ? null : length(shorter));
    }

    private SpokenLength length(String text) {
        return lengths.computeIfAbsent(text, this::measured);
    }

    private SpokenLength measured(String text) {
        SpokenTime time = pace.time(spoken.expand(text));
        double seconds = Math.max(LEAST_S, time.seconds());
        return new SpokenLength(
                seconds, Math.min(Math.max(LEAST_S, time.lowS()), seconds), Math.max(time.highS(), seconds));
    }
}
