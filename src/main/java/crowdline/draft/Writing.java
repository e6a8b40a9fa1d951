package crowdline.draft;

import crowdline.draft.Line.Role;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Pace;
import crowdline.speech.say.Spoken;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** One act being written. */
final class Writing {
    /** A call starts at most so long before its figure, seconds. As the plan has it. */
    static final double AHEAD_S = 8;
    /** A call is over so long before its figure, with what the plan keeps spare, seconds. */
    private static final double CALL_OVER_S = 1.6;
    /** How far a moment may come later than predicted without a call hiding it, seconds. */
    private static final double DRIFT_S = 0.6;
    /** What a call most often takes, before it is known, seconds. */
    private static final double USUAL_CALL_S = 4;
    /** What a person takes longer than predicted now and then. */
    private static final double LONGER = 1.06;
    /** Each further line in one figure is wanted so much less: the words go round. */
    private static final double FURTHER = 0.6;
    /** More lines than that, and a figure becomes a lecture. */
    private static final int MOST_LINES = 3;

    private static final int LEAST_WORDS = 5;
    /** Where nothing is shown: one line, and another for each so many seconds more. */
    private static final double REST_S = 20;
    /** A way between two figures as long as this wants its words before a short one does, which wants them so much less. */
    private static final double LONG_REST_S = 60;

    private static final double SHORT_REST = 0.8;

    private final Show show;
    private final Act act;
    private final List<Scene> scenes;
    private final Names names;
    private final @Nullable Aircraft craft;
    private final int number;
    private final SaidBefore said;
    private final Set<String> ids;
    private final Spoken spoken;
    private final Pace pace;
    /** Seconds that texts take: each is asked for again and again. */
    private final Map<String, Double> lengths = new HashMap<>();

    private double leftS;
    private final List<@Nullable Remark> calls = new ArrayList<>();
    /** Where the call says what the figure is. */
    private final Set<Integer> glossed = new HashSet<>();

    /** How those are called before which no call has time. */
    private final Map<Integer, String> unnamed = new TreeMap<>();

    private final List<FreeTime> free = new ArrayList<>();
    private final List<List<Written>> written = new ArrayList<>();

    /** A remark of a figure and when it is likely said, seconds after the figure's start. */
    private record Written(double startS, Role role, Remark remark) {}

    /** @param talkS how long may be talked, seconds */
    Writing(Show show, Act act, List<Scene> scenes, Pace pace, double talkS) {
        this.show = show;
        this.act = act;
        this.scenes = scenes;
        this.pace = pace;
        leftS = talkS;
        names = Names.of(show, act);
        craft = show.aircraft(act.airframe()).orElse(null);
        number = Math.max(0, show.acts().stream().map(Act::id).toList().indexOf(act.id()));
        said = new SaidBefore(show);
        ids = show.remarkIds();
        spoken = new Spoken(show.sayAs());
        scenes.forEach(s -> written.add(new ArrayList<>()));
    }

    /** The remarks of each figure, by its id. */
    Map<String, List<Remark>> write(Flight flight) {
        calls();
        for (int i = 0; i < scenes.size(); i++) {
            free.add(new FreeTime(scenes.get(i).durationS(), scenes.get(i).seen(), tailS(i)));
        }
        unnamed.forEach(this::name);
        closing();
        List<Line> lines = Material.of(show, act, flight, scenes, names);
        choose(lines);
        Map<String, List<Remark>> all = new HashMap<>();
        for (int i = 0; i < scenes.size(); i++) {
            List<Remark> own = new ArrayList<>();
            Remark call = calls.get(i);
            if (call != null) {
                own.add(call);
            }
            written.get(i).stream()
                    .sorted(Comparator.comparingDouble(Written::startS))
                    .forEach(w -> own.add(w.remark()));
            all.put(scenes.get(i).figure().id(), own);
        }
        return all;
    }

    /**
     * What is known of those who fly and found no place in a figure, to be said wherever there is time, or taken by its key.
     * To be asked once the figures are written. Nothing where a person has chosen what floats in the act.
     */
    List<Remark> floating() {
        if (act.remarks().stream().anyMatch(r -> !r.draft())) {
            return List.of();
        }
        return names.facts(show, act).stream()
                .filter(said::isNew)
                .map(fact -> FactWords.floating(fact, act, ids))
                .toList();
    }

    /** How long before the end of a figure nothing more is begun: the next call comes then. */
    private double tailS(int i) {
        if (i == scenes.size() - 1) {
            return -2;
        }
        Remark next = calls.get(i + 1);
        return next == null ? 0 : seconds(next.text()) * LONGER + CALL_OVER_S + 1;
    }

    private void calls() {
        Calls ways = new Calls(number);
        for (int i = 0; i < scenes.size(); i++) {
            Scene scene = scenes.get(i);
            if (scene.figure().remarks().stream().anyMatch(r -> r.kind() == RemarkKind.CALL)
                    || (i > 0 && (scene.isRest() || (scene.isGuess() && scene.entry() == null)))) {
                calls.add(null);
                continue;
            }
            String called =
                    scene.isRighting() ? Called.RIGHTING : Called.of(scene.figure(), scene.entry(), scene.calledSo());
            String plain =
                    Sentences.stopped(i == 0 ? Opening.words(scene, called, names, craft) : ways.of(called, scene));
            if (seconds(plain) > roomS(i)) {
                plain = Sentences.stopped(scene.isGuess() ? "Perhaps " + called : Sentences.begun(called));
            }
            if (i > 0 && seconds(plain) > roomS(i)) {
                calls.add(null);
                unnamed.put(i, called);
                continue;
            }
            Remark call = i == 0
                    ? opening(call(scene, plain, Optional.empty(), roomS(i)))
                    : call(scene, plain, longer(i, plain), roomS(i));
            calls.add(call);
            said.take(call.text());
            if (i > 0 && call.text().contains(": ") && scene.entry() != null) {
                glossed.add(i);
                Sentences.of(scene.entry().whatItIs()).stream().limit(1).forEach(said::take);
            }
            leftS -= seconds(call.text());
        }
    }

    /** How long a call may take: it hides nothing that is worth watching in the figure before. */
    private double roomS(int i) {
        double fromS = i == 0
                ? AHEAD_S
                : Math.min(AHEAD_S, scenes.get(i - 1).watchedToS().orElse(AHEAD_S) - DRIFT_S);
        return (fromS - CALL_OVER_S) / LONGER;
    }

    /** The call with what to look for, where the figure has no time for it; else with what it is, in a few words. */
    private Optional<String> longer(int i, String plain) {
        Scene scene = scenes.get(i);
        if (scene.entry() == null
                || scene.isGuess()
                || scene.isRighting()
                || scene.before() > 0
                || plain.matches(".* (two|three|four|five|six) .*s\\.")) {
            return Optional.empty();
        }
        Told told = new Told(scene.entry(), craft, scenes.stream().anyMatch(Scene::hasSmoke));
        String gloss = told.gloss(plain);
        double tailS = i < scenes.size() - 1 && !scenes.get(i + 1).isRest() ? USUAL_CALL_S + CALL_OVER_S : 0;
        FreeTime alone = new FreeTime(scene.durationS(), scene.seen(), tailS);
        Line look = new Line(i, Role.LOOK, "look", told.look(), 1);
        boolean fits = !told.look().isEmpty()
                && new Places(scene, alone)
                        .of(look, seconds(told.look()) * LONGER)
                        .isPresent();
        if (!fits && !told.look().isEmpty() && said.isNew(told.look())) {
            String with = plain + " " + told.look();
            if (seconds(with) <= roomS(i)) {
                return Optional.of(with.replaceFirst("^Watch for", "Now"));
            }
        }
        return gloss == null ? Optional.empty() : Optional.of(plain.replaceFirst("\\.$", ": " + gloss + "."));
    }

    /** The opening call with only who flies what for a short form: that stays true once the aircraft is in sight. */
    private Remark opening(Remark call) {
        String who = Opening.who(names, craft);
        String brief = Sentences.stopped(Sentences.begun(who));
        return call.text().contains(who) && seconds(brief) < seconds(call.text())
                ? call.worded(call.text(), brief)
                : call;
    }

    private Remark call(Scene scene, String plain, Optional<String> longer, double roomS) {
        boolean whole = longer.filter(l -> seconds(l) <= roomS).isPresent();
        String text = whole ? longer.orElseThrow() : plain;
        double fromS = roomS * LONGER + CALL_OVER_S;
        return new Remark(
                id(scene, "call"),
                RemarkKind.CALL,
                text,
                whole ? plain : null,
                null,
                null,
                fromS < AHEAD_S - 0.05 ? Double.valueOf(-Math.floor(fromS * 10) / 10) : null,
                null,
                1,
                false,
                true);
    }

    /** Names a figure as it begins, as there was no time before it. */
    private void name(int scene, String called) {
        String way = scenes.get(scene).isGuess()
                ? "This may be %s"
                : Called.isSeveral(called) ? "These are %s" : "This is %s";
        place(new Line(scene, Role.NAME, "name", Sentences.stopped(String.format(way, called)), 1), 2);
    }

    private void closing() {
        int last = scenes.size() - 1;
        if (!place(new Line(last, Role.CLOSING, "closing", Opening.goodbye(names, craft, number), 1), 2)) {
            place(new Line(last, Role.CLOSING, "closing", Opening.briefGoodbye(names), 1), 2);
        }
    }

    /** Takes the line that is wanted most, as often as there are lines, time for them and silence to spend. */
    private void choose(List<Line> lines) {
        List<Line> left = new ArrayList<>(lines);
        Set<String> told = new HashSet<>();
        while (!left.isEmpty()) {
            Line best =
                    left.stream().max(Comparator.comparingDouble(this::wanted)).orElseThrow();
            left.remove(best);
            boolean done = !told.contains(best.sort())
                    && !isToldAlready(best)
                    && hasRoom(best)
                    && scenes.get(best.scene()).figure().remarks().isEmpty()
                    && place(best, 1);
            if (done) {
                told.add(best.sort());
            }
        }
    }

    private boolean hasRoom(Line line) {
        Scene scene = scenes.get(line.scene());
        List<Written> there = written.get(line.scene());
        double rests = 1 + Math.floor(scene.durationS() / REST_S);
        boolean counted = line.role() == Role.NUMBER && there.stream().anyMatch(w -> w.role() == Role.NUMBER);
        return !counted && there.size() < (scene.isRest() ? Math.min(rests, MOST_LINES) : MOST_LINES);
    }

    /** Whether the call says what it is and what to look for is said too: the rest of what it is would tell it a third time. */
    private boolean isToldAlready(Line line) {
        if (line.role() != Role.WHAT && line.role() != Role.LOOK) {
            return false;
        }
        Role other = line.role() == Role.WHAT ? Role.LOOK : Role.WHAT;
        return glossed.contains(line.scene())
                && written.get(line.scene()).stream().anyMatch(w -> w.role() == other);
    }

    private double wanted(Line line) {
        Scene scene = scenes.get(line.scene());
        int there = written.get(line.scene()).size();
        if (!scene.isRest()) {
            return line.value() * Math.pow(FURTHER, there);
        }
        double length = Math.min(1, scene.durationS() / LONG_REST_S);
        double already = there * Math.min(1, REST_S / scene.durationS());
        return line.value() * (SHORT_REST + (1 - SHORT_REST) * length) * Math.pow(FURTHER, already);
    }

    private boolean place(Line line, double weight) {
        String text = switch (line.role()) {
            case LOOK -> said.isNew(line.text()) ? line.text() : "";
            case WHAT -> said.rest(line.text());
            default -> said.newPart(line.text());
        };
        if (text.isEmpty() || !(text.equals(line.text()) || saysSomething(text))) {
            return false;
        }
        String first = Sentences.of(text).get(0);
        return place(line, text, weight)
                || (line.role() != Role.HANDS
                        && !first.equals(text)
                        && saysSomething(first)
                        && place(line, first, weight));
    }

    /** A word or two left of a sentence say nothing. */
    private static boolean saysSomething(String text) {
        return text.split("\\s+").length >= LEAST_WORDS;
    }

    private boolean place(Line line, String text, double weight) {
        double seconds = seconds(text);
        if (seconds > leftS) {
            return false;
        }
        Scene scene = scenes.get(line.scene());
        FreeTime there = free.get(line.scene());
        Optional<Places.Place> place = new Places(scene, there).of(line, seconds * LONGER);
        place.ifPresent(p -> {
            there.take(p.startS(), p.startS() + seconds * LONGER);
            List<String> parts = Sentences.of(text);
            written.get(line.scene())
                    .add(new Written(
                            p.startS(),
                            line.role(),
                            new Remark(
                                    id(scene, line.role().name().toLowerCase(Locale.ROOT)),
                                    line.role().kind(),
                                    text,
                                    parts.size() > 1 && line.role() != Role.HANDS ? parts.get(0) : null,
                                    p.at(),
                                    p.until(),
                                    p.earliestS(),
                                    p.latestS(),
                                    weight,
                                    false,
                                    true)));
            said.take(text);
            leftS -= seconds;
        });
        return place.isPresent();
    }

    private double seconds(String text) {
        return lengths.computeIfAbsent(text, t -> pace.time(spoken.expand(t)).seconds());
    }

    private String id(Scene scene, String what) {
        String base = scene.figure().id() + "-" + what;
        String id = base;
        for (int i = 2; !ids.add(id); i++) {
            id = base + "-" + i;
        }
        return id;
    }
}
