package org.lowfirst.planning.study;

import java.util.List;

/** The kinds of bottles as numbers: shares added up, volumes, readings on arrival, stops in every band. Immutable. */
final class Kinds {

    private final double[] sharesUpTo;
    private final double[] volume_m3;
    private final double[] startLowest_Pa;
    private final double[] startRange_Pa;
    private final double[][] stop_molPerM3;

    Kinds(List<BottleUse> uses, Bands bands) {
        int count = uses.size();
        sharesUpTo = new double[count];
        volume_m3 = new double[count];
        startLowest_Pa = new double[count];
        startRange_Pa = new double[count];
        stop_molPerM3 = new double[count][bands.count()];
        double all = uses.stream().mapToDouble(BottleUse::share).sum();
        double upTo = 0.0;
        for (int i = 0; i < count; i++) {
            BottleUse use = uses.get(i);
            upTo += use.share();
            sharesUpTo[i] = upTo / all;
            volume_m3[i] = use.waterVolume().cubicMetres();
            startLowest_Pa[i] = use.startLowest().pascals();
            startRange_Pa[i] = use.startHighest().pascals() - startLowest_Pa[i];
            for (int band = 0; band < bands.count(); band++) {
                stop_molPerM3[i][band] = bands.stop_molPerM3(band, use);
            }
        }
    }

    int count() {
        return volume_m3.length;
    }

    /** The kind that a uniform number picks. */
    int picked(double uniform) {
        int kind = 0;
        while (kind < count() - 1 && uniform >= sharesUpTo[kind]) {
            kind++;
        }
        return kind;
    }

    double share(int kind) {
        return kind == 0 ? sharesUpTo[0] : sharesUpTo[kind] - sharesUpTo[kind - 1];
    }

    double volume_m3(int kind) {
        return volume_m3[kind];
    }

    /** Gauge reading on arrival [Pa], from the lowest at 0 to the highest at 1. */
    double start_Pa(int kind, double uniform) {
        return startLowest_Pa[kind] + startRange_Pa[kind] * uniform;
    }

    double stop_molPerM3(int kind, int band) {
        return stop_molPerM3[kind][band];
    }
}
