package crowdline.app.demo;

import crowdline.app.window.walk.Tours;
import crowdline.console.keys.Command;
import crowdline.console.walk.Notes;
import crowdline.console.walk.Walk;
import crowdline.console.walk.WalkView;
import crowdline.loaded.LoadedShow;
import crowdline.show.FigureNote;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Moments of walking a show's first act through, for pictures. */
final class DemoWalks {
    private final LoadedShow loaded;

    DemoWalks(LoadedShow loaded) {
        this.loaded = loaded;
    }

    /** The views, each under the name of its picture. */
    Map<String, WalkView> views() {
        Walk walk = walk();
        Map<String, WalkView> views = new LinkedHashMap<>();
        walk.command(Command.PLAY, 0);
        views.put("walk-call", walk.view(5));
        views.put("walk-flying", walk.view(106));
        walk.command(Command.PLAY, 106);
        walk.write("He waits here until the smoke is gone; look at his hands, not at the sheet.", 106);
        walk.command(Command.SLOWER, 106);
        views.put("walk-note", walk.view(106));
        walk.command(Command.TIME_PASS, 110);
        for (int i = 0; i < 4; i++) {
            walk.command(Command.PLAY, 111 + 9 * i);
        }
        views.put("walk-timing", walk.view(143));
        walk.command(Command.TIME_PASS, 150);
        walk.command(Command.FASTER, 150);
        walk.command(Command.PRACTISE, 200);
        for (int i = 0; i < 60; i++) {
            // Somebody who begins a little late and reads slowly, and leaves out every fifth.
            if (i % 5 != 4) {
                walk.command(Command.READ_ALOUD, 206 + 3.1 * i);
            }
        }
        views.put("walk-practice", walk.view(206 + 3.1 * 59 + 2));
        walk.command(Command.PRACTISE, 206 + 3.1 * 59 + 3);
        views.put("walk-score", walk.view(400));
        return views;
    }

    private Walk walk() {
        Notes notes = new Notes() {
            private List<FigureNote> all = List.of();

            @Override
            public List<FigureNote> all() {
                return all;
            }

            @Override
            public void keep(List<FigureNote> next) {
                all = List.copyOf(next);
            }
        };
        return new Walk(
                Tours.of(loaded), loaded.words(), loaded::plan, new PassesInMemory(), notes, () -> Instant.EPOCH);
    }
}
