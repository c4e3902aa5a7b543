"""What the second opinion says of a job, as figures by name: (value in SI, tolerance as a share, least that counts)."""

from lead import at, drop, ohms, running, runs
from money import changes, worth
from tables import MOTORS
from units import HORSEPOWER, si
from water import chain

# The same law with the same numbers: nothing but rounding.
EXACT = 1e-9
# IAPWS SR6-08, which the program counts with, is within 0.0001 % of IAPWS-95 in density.
DENSITY = 2e-6
# Its viscosity is within 0.01 % of R12-08; a friction factor moves at most in proportion, laminar.
VISCOSITY = 1.2e-4
# A drop is a difference of volts a hundred times as large.
DROP = 1e-8


def water(job):
    w = chain(job)
    # Laminar flow turns at 2,000; within the uncertainty of the viscosity either may be right.
    if abs(w["reynolds"] / 2000 - 1) < 2 * VISCOSITY:
        return {}
    plain = job["line"]["friction"] == "hazen_williams"
    rough = EXACT if plain else VISCOSITY
    # Where what goes up and what comes down cancel, rounding is that of the parts.
    parts = abs(w["pumping_level"]) + abs(w["rise"]) + w["pipe"] + w["fittings"] + w["pressure"] + w["velocity"]
    found = {
        "water.flow": (w["flow"], EXACT, 0),
        "levels.drawdown": (w["drawdown"], EXACT, 1e-9),
        "levels.pumping_level": (w["pumping_level"], EXACT, 1e-9),
        "levels.submergence": (w["submergence"], EXACT, 1e-6),
        "water.head.pipe": (w["pipe"], rough, 1e-9),
        "water.head.fittings": (w["fittings"], EXACT, 1e-9),
        "water.head.pressure": (w["pressure"], DENSITY, 1e-9),
        "water.head.rise": (w["rise"], EXACT, 1e-9),
        "water.head.velocity": (w["velocity"], EXACT, 1e-12),
        "water.head.total": (w["total"], rough + DENSITY, parts * 1e-3),
        "water.pump.duty.shaft": (w["shaft"], rough + 2 * DENSITY, 1e-3 * w["shaft"] * parts / max(abs(w["total"]), 1e-9)),
        "water.pump.duty.water": (w["water_power"], rough + 2 * DENSITY, 1e-3 * w["water_power"] * parts / max(abs(w["total"]), 1e-9)),
        "motor.shaft": (w["shaft"], rough + 2 * DENSITY, 0),
    }
    power = w["shaft"] / HORSEPOWER
    standard = [rating for rating in MOTORS if rating >= power]
    if standard and all(abs(power / rating - 1) > 2 * VISCOSITY for rating in MOTORS):
        found["motor.standard"] = (standard[0] * HORSEPOWER, EXACT, 0)
    share = w["shaft"] / si(job["motor"]["power"])
    found["motor.of_rating"] = (share, rough + 2 * DENSITY, 0)
    for volts in (230, 460):
        found[f"motor.running_{volts // 230 * 240}"] = (running(job, w["shaft"], volts), rough + 2 * DENSITY, 0)
    return found


def lead(job):
    """The lead of each voltage at the job's depth, and where the cheaper one changes."""
    depth, surface = si(job["site"]["pump_setting"]), si(job["site"]["surface_run"])
    length = depth + surface
    found, both = {}, {}
    for volts in (240, 480):
        name = f"at_depth.{volts} V"
        both[volts] = runs(job, volts)
        run = at(both[volts], depth)
        if run is None:
            found[name] = None
            continue
        cable = job["cable"]
        lost = drop(volts, run["amps"], run["pf"], run["size"], run["sets"], cable, length)
        resistance, _ = ohms(run["size"], run["sets"], cable)
        found |= {
            f"{name}.size": run["size"],
            f"{name}.sets": run["sets"],
            f"{name}.ground": run["ground"],
            f"{name}.governs": run["governs"],
            f"{name}.motor_current": (run["amps"], EXACT, 0),
            f"{name}.ampacity": (run["ampacity"], EXACT, 0),
            f"{name}.drop": (lost, DROP, 0),
            f"{name}.drop_share": (lost / volts, DROP, 0),
            f"{name}.loss": (3 * run["amps"] ** 2 * resistance * length, EXACT, 0),
            f"{name}.metal": (run["metal"], EXACT, 0),
            f"{name}.metal_in_lead": (run["metal"] * length, EXACT, 0),
            f"{name}.price": (run["price"], EXACT, 1e-9),
            f"{name}.cable": (run["price"] * length, EXACT, 1e-9),
            f"{name}.from": (run["from"], DROP, 1e-3),
            f"{name}.to": (run["to"], DROP, 1e-3),
        }
    pair = [at(both[volts], depth) for volts in (240, 480)]
    if all(pair):
        cost = [run["price"] * length for run in pair]
        extra = si(job["prices"]["extra_equipment"])
        most = max(cost)
        found["at_depth.saving.cable"] = (cost[0] - cost[1], EXACT, most)
        found["at_depth.saving.net"] = (cost[0] - cost[1] - extra, EXACT, most + abs(extra))
        found["at_depth.saving.metal"] = ((pair[0]["metal"] - pair[1]["metal"]) * length, EXACT, pair[0]["metal"] * length)
    return found, both


def even(job, both):
    """Where the cheaper way changes, by what is counted."""
    surface, extra = si(job["site"]["surface_run"]), si(job["prices"]["extra_equipment"])
    if not (both[240] and both[480]):
        return {}
    return {
        "cable": changes(both[240], both[480], surface, 0.0),
        "installed": changes(both[240], both[480], surface, extra),
    }


def years(job):
    energy = job["energy"]
    return si(energy["price"]), worth(si(energy["discount"]), si(energy["years"]))


def opinion(job):
    """All of it: figures by their place in an evaluation, the changes of the cheaper way, an energy price and its worth."""
    of_water = water(job)
    of_lead, both = lead(job)
    return of_water | of_lead, even(job, both), years(job)
