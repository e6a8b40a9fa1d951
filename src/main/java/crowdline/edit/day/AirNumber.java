package crowdline.edit.day;

import crowdline.show.DayAir;
import org.jspecify.annotations.Nullable;

/** A number of the air of the day. */
public enum AirNumber {
    QNH_HPA("the pressure"),
    TEMPERATURE_C("the temperature"),
    WIND_FROM_DEG("where the wind is from"),
    WIND_KT("the wind"),
    CLOUD_BASE_FT("the cloud base");

    private final String words;

    AirNumber(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The number; null for a cloud base that was not given. */
    public @Nullable Double of(DayAir air) {
        return switch (this) {
            case QNH_HPA -> air.qnhHpa();
            case TEMPERATURE_C -> air.temperatureC();
            case WIND_FROM_DEG -> air.windFromDeg();
            case WIND_KT -> air.windKt();
            case CLOUD_BASE_FT -> air.cloudBaseFt();
        };
    }

    /** The air with another number; null is standard air, or no cloud base. */
    DayAir in(DayAir a, @Nullable Double number) {
        Double now = number == null ? of(DayAir.STANDARD) : number;
        double value = now == null ? 0 : now;
        return new DayAir(
                this == QNH_HPA ? value : a.qnhHpa(),
                this == TEMPERATURE_C ? value : a.temperatureC(),
                this == WIND_FROM_DEG ? value : a.windFromDeg(),
                this == WIND_KT ? value : a.windKt(),
                a.windsAloft(),
                this == CLOUD_BASE_FT ? now : a.cloudBaseFt());
    }
}
