"""The motor's current and its lead: ampacity, drop, size, ground, metal, and how deep each size serves."""

from math import sqrt

from tables import AMBIENT, BUNDLES, CIRCULAR_MIL, DENSITY, GROUNDS, LAY, MOTORS, ORDER, SIZES
from units import FOOT, HORSEPOWER, si

ROOT3 = sqrt(3.0)
# Largest depth that is looked at.
DEEPEST = 3000 * FOOT
RATINGS = {"60 degC": 0, "75 degC": 1, "90 degC": 2}


def rated(motor):
    return min(MOTORS, key=lambda power: abs(power - si(motor["power"]) / HORSEPOWER))


def current(job, volts):
    """The larger of nameplate and table (NEC 430.6; practice for submersibles), and the table's own."""
    motor = job["motor"]
    table = MOTORS[rated(motor)][0 if volts == 240 else 1]
    plates = {230: motor.get("nameplate_amps_230"), 460: motor.get("nameplate_amps_460")}
    own, other = (230, 460) if volts == 240 else (460, 230)
    if plates[own]:
        plate = si(plates[own])
    elif plates[other]:
        plate = si(plates[other]) * other / own
    else:
        plate = None
    return max(table, plate or 0.0)


def running(job, shaft, volts):
    motor = job["motor"]
    return shaft / (ROOT3 * volts * si(motor["efficiency"]) * si(motor["power_factor"]))


def ampacity(size, sets, cable, ambient, needed):
    metal = 5 if cable["metal"] == "copper" else 6
    column = SIZES[size][metal]
    if column is None:
        return None
    kind = RATINGS[cable["insulation"]]
    # Hotter than the table goes there is no factor.
    factor = next((factors[kind] for most, factors in AMBIENT if ambient <= most + 1e-9), None)
    if factor is None:
        return None
    together = next(factor for most, factor in BUNDLES if 3 * sets <= most)
    # Terminals by 110.14(C): 75 °C where marked so or above 100 A.
    terminals = 1 if cable["terminals_marked_75"] or needed > 100 else 0
    return sets * min(column[kind] * factor * together, column[terminals])


def ohms(size, sets, cable):
    """Resistance and reactance per meter of all sets together."""
    row = SIZES[size]
    resistance = row[1] if cable["metal"] == "copper" else row[2]
    reactance = row[3] if cable["build"] == "plastic_conduit" else row[4]
    return resistance / (1000 * FOOT) / sets, reactance / (1000 * FOOT) / sets


def slopes(volts, amps, pf, size, sets, cable):
    r, x = ohms(size, sets, cable)
    sine = sqrt(1 - pf * pf)
    return ROOT3 * amps * (r * pf + x * sine), ROOT3 * amps * (x * pf - r * sine)


def drop(volts, amps, pf, size, sets, cable, length):
    """By phasors: the supply's volts are those of the load and the two parts of the drop."""
    along, across = (one * length for one in slopes(volts, amps, pf, size, sets, cable))
    return volts + along - sqrt(volts**2 - across**2)


def reach(volts, amps, pf, size, sets, cable, share):
    """The longest lead that keeps within a drop: the root of |V_load + a + jb| = V with V_load = V(1 - share)."""
    a, b = slopes(volts, amps, pf, size, sets, cable)
    left = volts * (1 - share)
    # (left + a L)^2 + (b L)^2 = volts^2
    square, half, whole = a * a + b * b, a * left, left * left - volts * volts
    return (-half + sqrt(half * half - square * whole)) / square


def ground_of(device, metal):
    return next(row[1 if metal == "copper" else 2] for row in GROUNDS if device <= row[0] + 1e-9)


def grown(ground, growth, phase):
    """250.122(B), no larger than the phases (A)."""
    area = SIZES[ground][0] * max(growth, 1.0)
    found = next((size for size in ORDER if SIZES[size][0] >= area * (1 - 1e-12)), phase)
    return min(found, phase, key=ORDER.index)


def mass(size, metal):
    return SIZES[size][0] * CIRCULAR_MIL * DENSITY[metal] * LAY


def runs(job, volts):
    """Each conductor that the lead takes, by how deep it serves."""
    cable, site = job["cable"], job["site"]
    amps, pf, share = current(job, volts), si(job["motor"]["power_factor"]), si(cable["allowed_drop"])
    needed = 1.25 * amps
    surface = si(site["surface_run"])
    found, least, depth = [], None, 0.0
    for sets in range(1, cable["most_sets"] + 1):
        for size in ORDER:
            if sets > 1 and ORDER.index(size) < ORDER.index("1/0 AWG"):
                continue
            allowed = ampacity(size, sets, cable, si(site["ambient"]), needed)
            if allowed is None or allowed < needed - 1e-9:
                continue
            least = least or (sets, size)
            to = min(reach(volts, amps, pf, size, sets, cable, share) - surface, DEEPEST)
            if to < 0 or (found and to <= depth):
                continue
            growth = sets * SIZES[size][0] / (least[0] * SIZES[least[1]][0])
            ground = grown(ground_of(si(cable["device"]), cable["metal"]), growth, size)
            metal = sets * (3 * mass(size, cable["metal"]) + mass(ground, cable["metal"]))
            price = si(job["prices"]["cable_fixed"]) * sets + si(job["prices"]["cable_metal"]) * metal
            found.append({
                "size": size, "sets": sets, "from": depth, "to": to, "ampacity": allowed, "ground": ground, "metal": metal,
                "price": price, "governs": "ampacity" if (sets, size) == least else "drop", "amps": amps, "pf": pf, "volts": volts,
            })
            depth = to
            if to >= DEEPEST:
                return found
    return found


def at(found, depth):
    return next((run for run in found if depth <= run["to"] * (1 + 1e-12)), None)
