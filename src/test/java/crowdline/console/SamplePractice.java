package crowdline.console;

import crowdline.console.live.OnAir;
import crowdline.console.live.SampleOnAir;
import crowdline.console.path.CrowdView;
import crowdline.console.path.SkyView;
import crowdline.console.practice.Practice;
import crowdline.console.practice.PracticeChoice;
import crowdline.console.practice.PracticeHost;
import crowdline.console.practice.PracticeScored;
import crowdline.console.practice.Spotted;
import crowdline.practice.PracticeScore;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Line;
import crowdline.sight.PathExtent;
import java.util.List;
import java.util.Optional;

/** Practice flights with an empty sky, as long as they are wanted. On the event thread. */
final class SamplePractice implements PracticeHost {
    private final OnAir onAir = new SampleOnAir();
    boolean apart;
    boolean over;

    @Override
    public Optional<String> refusal() {
        return Optional.empty();
    }

    @Override
    public List<ActRow> acts() {
        return List.of(new ActRow("a", "An act", "A pilot"), new ActRow("b", "Another", "A pilot"));
    }

    @Override
    public boolean skyApart() {
        return apart;
    }

    @Override
    public void spot(PracticeChoice choice, Spotting answer) {
        answer.asks(new Spotted(
                "An act, flight 1",
                choice,
                new CrowdView(SkyView.NONE, new PathExtent(0, 1, 0, 1)),
                0,
                10,
                List.of("loop", "spin"),
                List.of("The loop is left out", "The spin is left out"),
                1));
    }

    @Override
    public void begin(PracticeChoice choice, Begun answer) {
        answer.flies(new Practice() {
            @Override
            public OnAir onAir() {
                return onAir;
            }

            @Override
            public CrowdView sky() {
                return new CrowdView(SkyView.NONE, new PathExtent(0, 1, 0, 1));
            }

            @Override
            public boolean isOver() {
                return over;
            }

            @Override
            public void end(Told told) {
                told.accept(new PracticeScored(
                        "An act, level 1, flight 1",
                        choice,
                        new PracticeScore(
                                List.of(
                                        new Line(About.PLAN, false, "It broke."),
                                        new Line(About.STEPS, true, "In step.")),
                                List.of())));
            }

            @Override
            public void drop() {}
        });
    }
}
