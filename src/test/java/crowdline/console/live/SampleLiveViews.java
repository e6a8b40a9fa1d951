package crowdline.console.live;

import crowdline.console.incident.IncidentView;
import crowdline.console.incident.IncidentView.ContactView;
import crowdline.console.live.day.OrderView;
import crowdline.console.live.next.NextView;
import crowdline.console.live.next.NextView.FactView;
import crowdline.console.live.next.NextView.Later;
import crowdline.console.live.next.NextView.Wording;
import crowdline.console.live.now.NowView;
import crowdline.console.live.now.SeenView;
import crowdline.console.live.say.SayView;
import crowdline.console.live.say.SayView.Bars;
import crowdline.console.live.say.SayView.What;
import crowdline.console.live.strip.StripView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.sight.SideView;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Spot;
import crowdline.sight.SideView.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Made-up moments of a made-up act, to paint and to look at. */
public final class SampleLiveViews {
    private SampleLiveViews() {}

    /** A running order of one act that waits and one that is cancelled. */
    public static OrderView order() {
        return new OrderView(
                List.of(
                        new OrderView.Row(
                                "a1",
                                new Mark(Form.UP, Tone.CALM, "Next"),
                                "14:30",
                                "",
                                "expect 14:38",
                                "7 min",
                                "The Calder display",
                                "Rosa Vent, Calder 200"),
                        new OrderView.Row(
                                "a2",
                                new Mark(Form.CROSS, Tone.CAUTION, "Cancelled"),
                                "15:02",
                                "12 min later",
                                "",
                                "8 min",
                                "The glider of Marram Field",
                                "Ida Lorn, Wisp")),
                0);
    }

    public static Map<String, LiveView> all() {
        Map<String, LiveView> views = new LinkedHashMap<>();
        views.put("live-flying", flying());
        views.put("live-listen", listen());
        views.put("live-long", longWords());
        views.put("live-holding", holding());
        views.put("live-before", before());
        views.put("live-after", after());
        return views;
    }

    public static LiveView flying() {
        return new LiveView(
                strip("4:12, slot 12:00", new Mark(Form.DOWN, Tone.CAUTION, "6 s late"), aircraft(), sure(), fresh()),
                new NowView(
                        "Flying now",
                        null,
                        "Half Cuban",
                        "Five-eighths of a loop, then a roll from upside down to upright on the way down.",
                        0.42,
                        "4.1 s",
                        side(1, 0.55),
                        new SeenView("Over the top", "rolls upright")),
                new SayView(
                        What.WORDS,
                        "Say now",
                        "Explanation",
                        List.of(
                                "Over the top and down the far side,",
                                "and while the nose is still pointing at the ground",
                                "she rolls the right way up again."),
                        0.4,
                        new Mark(Form.DISC, Tone.GOOD, "Fits, 2 s to spare"),
                        new Bars(9, 6.6, 7.4, 2.6, "6 s left", "4 s to say")),
                new NextView(
                        "Next in",
                        "6 s",
                        "Stall turn",
                        "Watch the very top: the aeroplane stops, hangs, and turns on its own wing tip.",
                        List.of(new Later("Four-point hesitation roll", "in 21 s"), new Later("Avalanche", "in 34 s")),
                        facts()),
                null,
                Handles.NONE);
    }

    public static LiveView listen() {
        return new LiveView(
                strip("6:40, slot 12:00", new Mark(Form.DISC, Tone.GOOD, "On time"), clock(), fairly(), noReading()),
                new NowView(
                        "Flying now",
                        null,
                        "Tail slide or stall turn",
                        "It climbs straight up until it stops; watch which way the nose falls.",
                        0.7,
                        "9 s",
                        side(3, 0.3),
                        new SeenView("Hangs on its propeller", "slides backwards")),
                new SayView(
                        What.LISTEN,
                        "Quiet",
                        "Let them hear the engine fade",
                        List.of("Let them listen"),
                        0,
                        null,
                        new Bars(8, 0, 0, 3, "5 s of quiet", "")),
                new NextView(
                        "Next in",
                        "9 s",
                        "Loop",
                        "And straight into a loop, the oldest figure of them all.",
                        List.of(new Later("Spin", "in 19 s"), new Later("Low pass", "in 40 s")),
                        facts()),
                null,
                Handles.NONE);
    }

    public static LiveView longWords() {
        return new LiveView(
                strip(
                        "10:02, slot 12:00",
                        new Mark(Form.UP, Tone.CAUTION, "12 s early"),
                        hand(),
                        new Mark(Form.ONE_OF_THREE, Tone.CAUTION, "Not sure"),
                        new Mark(Form.DIAMOND, Tone.ALARM, "14 s old")),
                new NowView(
                        "Flying now",
                        new Mark(Form.CROSS, Tone.CAUTION, "Off plan"),
                        "Reverse half Cuban with a two-point hesitation roll",
                        "<html><b>A forty-five degree climb</b>, a roll to inverted in two clear stops, then the last"
                                + " five-eighths of a loop back to where it came from.",
                        0.95,
                        "11 s",
                        side(2, 0.1)),
                new SayView(
                        What.WORDS,
                        "Say now",
                        "Duty",
                        List.of(
                                "Before the last figure a word of thanks to the volunteers of the Marram Field"
                                        + " Flying Club,",
                                "who have been here since five o'clock this morning",
                                "to put up every rope, every sign and every single one of the two hundred and"
                                        + " forty litter bins on this field,",
                                "and who will still be here long after you and I have gone home."),
                        0.15,
                        new Mark(Form.STOP, Tone.ALARM, "4 s too long"),
                        new Bars(13, 17, 19, 2, "11 s left", "15 s to say")),
                new NextView(
                        "Next in",
                        "11 s",
                        "Inverted pass along the whole crowd line",
                        "Here it comes from your right, upside down, and very much on purpose: give the pilot a wave"
                                + " as the canopy goes by.",
                        List.of(
                                new Later("Quarter clover with a half roll on the up-line", "in 26 s"),
                                new Later("Eight-point hesitation roll", "in 48 s")),
                        facts()),
                null,
                Handles.NONE);
    }

    public static LiveView holding() {
        LiveView flying = flying();
        NowView now = flying.now();
        return new LiveView(
                strip("5:03, slot 12:00", new Mark(Form.BARS, Tone.CAUTION, "Held 18 s"), hand(), sure(), noReading()),
                new NowView(
                        now.caption(),
                        new Mark(Form.BARS, Tone.CAUTION, "Holding: H goes on"),
                        "Reposition",
                        now.look(),
                        1,
                        "held",
                        side(2, 0.9)),
                new SayView(
                        What.WORDS,
                        "While we wait",
                        "Filler",
                        List.of(
                                "If you can smell smoke, do not worry:",
                                "it is paraffin, the same as in a garden lamp,",
                                "burnt in the hot exhaust so that you can see the path."),
                        0,
                        null,
                        null),
                flying.next(),
                null,
                Handles.NONE);
    }

    public static LiveView before() {
        return new LiveView(
                new StripView(
                                "Rosa Vent, Calder 200",
                                "not begun",
                                new Mark(Form.RING, Tone.CALM, "Waiting"),
                                hand(),
                                new Mark(Form.RING, Tone.CALM, "On the ground"),
                                noReading(),
                                "14:25:30")
                        .listening(),
                new NowView(
                        "Before the act",
                        new Mark(Form.RING, Tone.CALM, "Slot 14:30"),
                        "On in 4:30",
                        "Rosa Vent in the Calder 200, the full display: 14 figures, 12 minutes.",
                        0.6,
                        "4:30",
                        side(-1, -1)),
                new SayView(
                        What.WORDS,
                        "Say meanwhile",
                        "Duty",
                        List.of("Please keep behind the orange line,", "and keep hold of your hats and your children."),
                        0,
                        null,
                        null),
                new NextView(
                        "First, in",
                        "4:30",
                        "Take-off",
                        "The engine you hear is Rosa.",
                        List.of(new Later("Loop", "in 5:40"), new Later("Half Cuban", "in 5:52")),
                        facts()),
                null,
                Handles.NONE);
    }

    public static LiveView after() {
        return new LiveView(
                new StripView(
                        "Rosa Vent, Calder 200",
                        "12:20 flown",
                        new Mark(Form.DOWN, Tone.CALM, "20 s late"),
                        hand(),
                        new Mark(Form.RING, Tone.CALM, "Act over"),
                        noReading(),
                        "14:42:50"),
                new NowView(
                        "After the act",
                        new Mark(Form.DISC, Tone.GOOD, "Act over"),
                        "Next act in 2:10",
                        "The Tern Pair, two gliders to music, slot 14:45.",
                        0.3,
                        "2:10",
                        SideView.NONE),
                new SayView(
                        What.NOTHING,
                        "Say now",
                        "",
                        List.of("Everything that had to be said has been said."),
                        0,
                        null,
                        null),
                new NextView("Then", "14:45", "The Tern Pair", "", List.of(), List.of()),
                null,
                Handles.NONE);
    }

    public static LiveView incident() {
        LiveView v = flying();
        IncidentView page = new IncidentView(
                "Agreed with the display director, 2 May",
                "Noted 14:32:05",
                "1 min 10 s ago",
                List.of(
                        "Stop talking. Breathe. Look at the display director.",
                        "Say the words on the right, slowly, once.",
                        "Music off. No guesses, no names, no causes.",
                        "Leave the crowd's exits free."),
                List.of(
                        "Ladies and gentlemen, the display has been stopped.",
                        "Please stay where you are and leave the roads free for the emergency services.",
                        "We will tell you more as soon as there is something certain to tell."),
                List.of(
                        new ContactView("Display director", "radio channel 1, or the red telephone"),
                        new ContactView("Medical", "radio channel 4"),
                        new ContactView("Organiser's office", "caravan behind the commentary box")));
        return new LiveView(v.strip(), v.now(), v.say(), v.next(), page, v.warnings(), v.handles(), v.told());
    }

    private static StripView strip(String time, Mark drift, Mark source, Mark sureness, Mark reading) {
        return new StripView("Rosa Vent, Calder 200", time, drift, source, sureness, reading, "14:34:12");
    }

    private static Mark aircraft() {
        return new Mark(Form.AEROPLANE, Tone.CALM, "Aircraft");
    }

    private static Mark clock() {
        return new Mark(Form.CLOCK, Tone.CALM, "Clock");
    }

    private static Mark hand() {
        return new Mark(Form.SQUARE, Tone.CALM, "Hand");
    }

    private static Mark sure() {
        return new Mark(Form.THREE_OF_THREE, Tone.GOOD, "Sure");
    }

    private static Mark fairly() {
        return new Mark(Form.TWO_OF_THREE, Tone.CALM, "Fairly sure");
    }

    private static Mark fresh() {
        return new Mark(Form.DISC, Tone.GOOD, "0.2 s old");
    }

    private static Mark noReading() {
        return new Mark(Form.RING, Tone.CALM, "None");
    }

    private static List<FactView> facts() {
        return List.of(
                new FactView(
                        1,
                        new Wording("At the bottom of the loop she weighs four and a half times as much.", "5 s"),
                        new Wording("She weighs four and a half times as much.", "3 s")),
                new FactView(2, new Wording("The Calder 200 weighs less than a small family car.", "4 s")),
                new FactView(3, new Wording("Rosa learned to fly before she learned to drive.", "4 s")));
    }

    /** A loop, a half Cuban, a reposition and an up-line, side by side and a little on top of each other. */
    static SideView side(int current, double share) {
        List<Stretch> stretches = new ArrayList<>();
        List<Spot> loop = new ArrayList<>(List.of(new Spot(-520, 110), new Spot(-150, 110)));
        arc(loop, -150, 250, 140, -90, 270);
        stretches.add(new Stretch(loop));
        List<Spot> cuban = new ArrayList<>(List.of(new Spot(-150, 110), new Spot(190, 110)));
        arc(cuban, 190, 270, 160, -90, 135);
        cuban.add(new Spot(-90, 210));
        cuban.add(new Spot(-190, 130));
        stretches.add(new Stretch(cuban));
        List<Spot> back = new ArrayList<>(List.of(new Spot(-190, 130)));
        for (int i = 0; i <= 20; i++) {
            double a = Math.PI * i / 20;
            back.add(new Spot(-320 - 240 * Math.sin(a), 130 + 60 * Math.sin(a) - 20.0 * i / 20));
        }
        stretches.add(new Stretch(back));
        List<Spot> up = new ArrayList<>(List.of(new Spot(-320, 110), new Spot(240, 110)));
        arc(up, 240, 190, 80, -90, 0);
        up.add(new Spot(320, 470));
        arc(up, 332, 470, 12, 180, 0);
        up.add(new Spot(344, 190));
        arc(up, 424, 190, 80, 180, 270);
        up.add(new Spot(520, 110));
        stretches.add(new Stretch(up));
        if (current < 0) {
            return new SideView(stretches, -1, null, 150.0);
        }
        List<Spot> spots = stretches.get(current).spots();
        int i = Math.min(spots.size() - 2, (int) (share * spots.size()));
        Spot a = spots.get(i);
        Spot b = spots.get(i + 1);
        double pathRad = Math.atan2(b.heightM() - a.heightM(), b.alongM() - a.alongM());
        return new SideView(
                stretches,
                current,
                current == 3 ? Craft.predicted(a, pathRad, 0) : Craft.read(a, pathRad, 0, List.of(), 0.4),
                150.0);
    }

    private static void arc(List<Spot> spots, double x, double z, double r, double fromDeg, double toDeg) {
        for (int i = 0; i <= 40; i++) {
            double a = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / 40);
            spots.add(new Spot(x + r * Math.cos(a), z + r * Math.sin(a)));
        }
    }
}
