package crowdline.console.live;

import crowdline.console.live.next.NextView;
import crowdline.console.live.next.NextView.FactView;
import crowdline.console.live.next.NextView.Later;
import crowdline.console.live.next.NextView.Wording;
import crowdline.console.live.now.NowView;
import crowdline.console.live.now.SeenView;
import crowdline.console.live.say.SayView;
import crowdline.console.live.say.SayView.Bars;
import crowdline.console.live.say.SayView.What;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.speech.plain.Breaths;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Live with words of every length: all short, all as long as people write them, and the one long among short ones. */
public final class LongAndShort {
    private static final String WORD = "somewhere behind the old hangar ";

    private LongAndShort() {}

    /** So many letters of words. */
    static String letters(int count) {
        return WORD.repeat(count / WORD.length() + 1).substring(0, count).strip() + ".";
    }

    /** The views, each under what is long in it. */
    public static Map<String, LiveView> all() {
        Map<String, LiveView> views = new LinkedHashMap<>();
        views.put("all short", view(9, 30, 40, 12, 40, 40, What.WORDS));
        views.put("as usual", view(18, 75, 110, 18, 75, 65, What.WORDS));
        views.put("waiting", view(18, 75, 110, 18, 75, 65, What.WAITING));
        views.put("a quiet", view(18, 75, 15, 18, 75, 65, What.LISTEN));
        views.put("long words to say", view(12, 60, 250, 12, 60, 40, What.WORDS));
        views.put("long name", view(70, 75, 110, 60, 75, 40, What.WORDS));
        views.put("long sentence", view(12, 190, 110, 12, 75, 40, What.WORDS));
        views.put("long call", view(12, 60, 110, 12, 160, 40, What.WORDS));
        views.put("long facts", view(12, 60, 110, 12, 60, 160, What.WORDS));
        views.put("all long", view(60, 170, 250, 60, 160, 160, What.WORDS));
        return views;
    }

    private static LiveView view(int name, int look, int say, int next, int call, int fact, What what) {
        NowView now = new NowView(
                "Flying now",
                new Mark(Form.BARS, Tone.CAUTION, "Holding"),
                "N" + letters(name),
                "Look " + letters(look),
                0.4,
                "0:47",
                SampleLiveViews.side(2, 0.4),
                new SeenView("Hangs on its propeller", "the nose falls through"));
        boolean words = what != What.LISTEN;
        SayView says = new SayView(
                what,
                what == What.WAITING ? "Say in 2:27" : words ? "Say now" : "Quiet",
                words ? "Explanation" : "hear it fade",
                Breaths.lines("Say " + letters(say), 54),
                0.2,
                words ? new Mark(Form.DIAMOND, Tone.CAUTION, "Runs over by 12 s") : null,
                new Bars(12, 9, 11, 2, words ? "10 s left" : "10 s of quiet", words ? "7 s to say" : ""));
        List<FactView> facts = List.of(
                new FactView(1, new Wording("One " + letters(fact), "5 s"), new Wording("One " + letters(30), "2 s")),
                new FactView(2, new Wording("Two " + letters(fact), "6 s")),
                new FactView(3, new Wording("Three " + letters(fact), "7 s")));
        NextView then = new NextView(
                "Next in",
                "23 s",
                "X" + letters(next),
                "Call " + letters(call),
                List.of(new Later("Spin", "in 59 s"), new Later("Quarter clover with a half roll", "in 1:19")),
                facts);
        return new LiveView(SampleLiveViews.flying().strip(), now, says, then, null, Handles.NONE);
    }
}
