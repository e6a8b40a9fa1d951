package crowdline.app.window.show;

import crowdline.arrange.ShowArranging;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.storage.show.IncidentTemplate;
import java.time.LocalDate;
import java.time.ZoneId;

/** What a new show begins with. */
final class NewShow {
    private static final String TITLE = "New show";

    private NewShow() {}

    /** No acts and no limits, and incident words that nobody has agreed to yet. */
    static LoadedShow on(LocalDate day, ShowLoader loader) {
        return loader.fresh(ShowArranging.empty(
                TITLE, day, ZoneId.systemDefault(), IncidentTemplate.shipped().incident()));
    }
}
