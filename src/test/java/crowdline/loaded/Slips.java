package crowdline.loaded;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A show file with one number at a time written wrongly. */
final class Slips {
    private static final Pattern NUMBER = Pattern.compile("\"([A-Za-z0-9]+)\": (-?[0-9]+(?:\\.[0-9]+)?)(?=[,}\\s])");

    private final String text;

    /** One number of the file: its key and where it stands. */
    record Place(String key, int from, int to, String written) {
        @Override
        public String toString() {
            return key + " " + written;
        }
    }

    /** What was written instead of a number, and the file it makes. */
    record Slip(Place place, String instead, String text) {
        @Override
        public String toString() {
            return place + " as " + instead;
        }
    }

    Slips(String text) {
        this.text = text;
    }

    /** Every number in the file but its version. */
    List<Place> places() {
        List<Place> places = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            if (!matcher.group(1).equals("crowdline")) {
                places.add(new Place(matcher.group(1), matcher.start(2), matcher.end(2), matcher.group(2)));
            }
        }
        return places;
    }

    /** Every way of writing one number wrongly. */
    List<Slip> of(Place place) {
        BigDecimal is = new BigDecimal(place.written());
        List<Slip> slips = new ArrayList<>();
        for (String factor : List.of("0", "-1", "0.1", "10", "100", "1e6")) {
            slips.add(with(place, is.multiply(new BigDecimal(factor)).toString()));
        }
        for (String other : List.of("1e-9", "1e308", "-1e308", "1e5", "3")) {
            slips.add(with(place, other));
        }
        slips.add(with(place, '"' + place.written() + " ft\""));
        slips.add(with(place, '"' + place.written().replace('.', ',') + '"'));
        return slips;
    }

    Slip with(Place place, String instead) {
        return new Slip(place, instead, text.substring(0, place.from()) + instead + text.substring(place.to()));
    }
}
