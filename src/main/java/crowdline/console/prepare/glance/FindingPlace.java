package crowdline.console.prepare.glance;

import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.LocatedFinding;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a finding lies, as the window calls it: which figure, or which act; a line of the file says nothing there. */
final class FindingPlace {
    private static final Pattern ACT = Pattern.compile("^acts\\[(\\d+)\\]");
    private static final Pattern FIGURE = Pattern.compile("^acts\\[\\d+\\]\\.figures\\[(\\d+)\\]");

    private FindingPlace() {}

    /**
     * Where in the show.
     *
     * @return empty where it is of no act, and where the finding says it itself
     */
    static String of(LocatedFinding found, Show show, Catalogue catalogue) {
        return at(ACT, found.path(), show.acts())
                .map(act -> at(FIGURE, found.path(), act.figures())
                        .map(catalogue::nameOf)
                        .orElseGet(act::title))
                .filter(name -> !found.message().contains(name))
                .orElse("");
    }

    private static <T> Optional<T> at(Pattern key, String path, List<T> all) {
        Matcher place = key.matcher(path);
        return place.find() && place.group(1).length() < 6
                ? all.stream().skip(Integer.parseInt(place.group(1))).findFirst()
                : Optional.empty();
    }
}
