"""Whole jobs worked from the water to the saving, kept in whole.json, which the reference tests compare with core.

python whole.py writes the file anew. All jobs are invented; the first is the house well of the worked examples.
"""

import json
from pathlib import Path

from figures import opinion
from units import FACTORS

FILE = Path(__file__).with_name("whole.json")


def q(value, unit):
    return {"value": value, "unit": unit}


def typed(gpm):
    return {"by": "flow", "flow": q(gpm, "gpm")}


def pipe(drop, surface, rough=(0.0018, 6e-5), fittings=(9, 0), hazen=(120, 150)):
    found = {}
    for name, inside, roughness, k, c in zip(("drop", "surface"), (drop, surface), rough, fittings, hazen):
        found |= {
            f"{name}_inside": q(inside, "in"), f"{name}_roughness": q(roughness, "in"), f"{name}_fittings": q(k, "1"),
            f"{name}_hazen_williams": q(c, "1"),
        }
    return found


def job(name, site, demand, well, line, pump, motor, cable, prices):
    return {
        "schema": 1, "name": f"{name} (invented)", "note": "", "demo": True,
        "site": {key: q(*value) for key, value in site.items()},
        "demand": demand,
        "well": well,
        "line": {"friction": "darcy_weisbach"} | line,
        "pump": {"efficiency": q(pump, "1")},
        "motor": {"kind": "submersible"} | motor,
        "cable": {
            "metal": "copper", "build": "plastic_conduit", "insulation": "75 degC", "terminals_marked_75": True,
            "most_sets": 1, "allowed_drop": q(5, "%"), "device": q(60, "A"),
        } | cable,
        "energy": {"price": q(0.12, "$/kWh"), "discount": q(6, "%"), "years": q(15, "yr"), "hours": q(1500, "h")},
        "prices": {
            "source": "Invented prices", "cable_fixed": q(prices[0], "$/ft"), "cable_metal": q(prices[1], "$/lb"),
            "extra_equipment": q(prices[2], "$"),
        },
    }


def motor(power, pf, efficiency, low=None, high=None):
    found = {"power": q(power, "hp"), "power_factor": q(pf, "1"), "efficiency": q(efficiency, "1")}
    for volts, amps in ((230, low), (460, high)):
        if amps:
            found[f"nameplate_amps_{volts}"] = q(amps, "A")
    return found


def capacity(gpm_per_foot, celsius=15.555555555555555):
    return {"drawdown_by": "specific_capacity", "specific_capacity": q(gpm_per_foot, "gpm/ft"), "water_temperature": q(celsius, "degC")}


def measured(celsius):
    return {"drawdown_by": "measured", "water_temperature": q(celsius, "degC")}


def aquifer(transmissivity, storage, bore, hours, loss):
    return {
        "drawdown_by": "aquifer", "transmissivity": q(transmissivity, "gal/(d ft)"), "storage": q(storage, "1"),
        "bore_diameter": q(bore, "in"), "pumping_time": q(hours, "h"), "loss": q(loss, "ft/gpm2"), "water_temperature": q(55, "degF"),
    }


def line(sizes, surface, rise, pressure, **more):
    return pipe(*sizes, **more) | {"surface_length": q(surface, "ft"), "rise": q(rise, "ft"), "pressure": q(pressure, "psi")}


def place(setting, static, surface=40, ambient=40, altitude=1000, **more):
    found = {
        "pump_setting": (setting, "ft"), "static_level": (static, "ft"), "surface_run": (surface, "ft"),
        "ambient": (ambient, "degC"), "altitude": (altitude, "m"),
    }
    return found | more


LAND = {
    "by": "land", "area": q(6, "acre"), "depth": q(0.22, "in/d"), "depth_of": "net", "application_efficiency": q(0.75, "1"),
    "hours": q(20, "h"),
}
STOCK = {
    "by": "people_and_stock", "hours": q(6, "h"), "people": q(4, "1"), "beef": q(120, "1"), "dairy": q(0, "1"), "horses": q(6, "1"),
    "person_daily": q(75, "gal/d"), "beef_daily": q(15, "gal/d"), "dairy_daily": q(35, "gal/d"), "horse_daily": q(12, "gal/d"),
}

JOBS = [
    job("House and stock well", place(620, 430, ambient=45, altitude=1400), typed(25), capacity(0.6),
        line((1.610, 1.610), 80, 4, 60), 0.60, motor(7.5, 0.80, 0.78, 22.5, 11.3), {}, (0.5, 9, 900)),
    job("Shallow house well", place(120, 40, 25), typed(10), capacity(1.5), line((1.049, 1.049), 200, 10, 50), 0.55,
        motor(1, 0.75, 0.72), {"device": q(20, "A")}, (0.3, 8, 650)),
    job("Stock tank", place(900, 610, 60, 43), STOCK, measured(18), line((1.380, 2.067), 1200, 35, 5), 0.58,
        motor(5, 0.79, 0.77, 16.1, 8.1), {"device": q(40, "A")}, (0.5, 9, 1200)),
    job("Deep stock well", place(1450, 1180, 30, 38), typed(14), capacity(0.25), line((1.278, 1.278), 500, 20, 40), 0.57,
        motor(10, 0.8, 0.78, 30, None), {"device": q(70, "A")}, (0.55, 9.5, 1500)),
    job("Orchard", place(410, 260, 120, 46, 300), LAND, aquifer(18000, 2e-4, 8, 24, 8e-5), line((3.068, 4.026), 600, 12, 45), 0.70,
        motor(15, 0.84, 0.82, 45.5, 22.8), {"device": q(100, "A"), "insulation": "90 degC"}, (0.8, 9, 2500)),
    job("Pivot", place(320, 150, 200, 44, 900), typed(450), aquifer(60000, 0.15, 16, 1000, 2e-5), line((5.047, 6.065), 1300, 30, 35), 0.76,
        motor(60, 0.85, 0.86), {"device": q(250, "A"), "most_sets": 2}, (1.2, 9, 7000)),
    job("Village", place(780, 520, 90, 35, 2100), typed(90), capacity(3.2, 21), line((2.469, 3.068), 2500, 140, 15), 0.68,
        motor(30, 0.84, 0.82, 86, 43), {"device": q(150, "A"), "build": "steel_conduit"}, (0.9, 8.5, 3200)),
    job("Campground", place(560, 300, 350, 40, 1700), typed(38), capacity(0.9), line((1.939, 1.939), 900, 55, 58, hazen=(140, 140)) | {"friction": "hazen_williams"},
        0.62, motor(10, 0.82, 0.80, 31, 15.5), {"device": q(70, "A"), "terminals_marked_75": False}, (0.5, 9, 1100)),
    job("Dairy", place(240, 90, 60, 32, 200), typed(110), measured(12), line((3.068, 3.068), 300, 8, 60), 0.71,
        motor(15, 0.83, 0.80, 44, 22), {"device": q(110, "A"), "allowed_drop": q(3, "%")}, (0.5, 7, 1000)),
    job("Mine camp", place(2300, 1900, 50, 48, 1500), typed(30), capacity(0.4, 27), line((1.610, 1.610), 150, 15, 30), 0.61,
        motor(30, 0.82, 0.80, 84, 42), {"device": q(150, "A"), "most_sets": 2, "insulation": "90 degC"}, (1.0, 10, 3800)),
    job("Test farm in aluminum", place(350, 200, 80, 40), typed(60), capacity(2), line((2.067, 2.067), 400, 10, 50), 0.66,
        motor(10, 0.8, 0.78), {"metal": "aluminum", "device": q(70, "A")}, (0.4, 3.5, 900)),
    job("Cold plain", place(150, 60, 30, -5, 600), typed(18), measured(5), line((1.610, 1.610), 60, 5, 50), 0.57,
        motor(2, 0.77, 0.74, 7.5, 3.8), {"device": q(20, "A"), "insulation": "60 degC", "terminals_marked_75": False}, (0.3, 9, 700)),
]
for one, meters in ((JOBS[2], 9.0), (JOBS[8], 12.5), (JOBS[11], 4.0)):
    one["site"]["drawdown"] = q(meters, "m")

# The unit in which an evaluation tells a figure, by the end of its name.
UNITS = {
    "flow": "gpm", "shaft": "hp", "water": "hp", "standard": "hp", "of_rating": "%", "running_240": "A", "running_480": "A",
    "motor_current": "A", "ampacity": "A", "drop": "V", "drop_share": "%", "loss": "W", "metal": "lb/ft", "metal_in_lead": "lb",
    "price": "$/ft", "cable": "$", "net": "$",
}


def rounded(value):
    """Twelve digits: the last bits of a sum are another machine's own."""
    return float(f"{value:.12g}")


def told(path, value):
    if not isinstance(value, tuple):
        return value
    unit = "lb" if path == "at_depth.saving.metal" else UNITS.get(path.split(".")[-1], "ft")
    number, tolerance, least = value
    off = tolerance * max(abs(number), least)
    return {"value": rounded(number / FACTORS[unit]), "unit": unit, "off": rounded(off / FACTORS[unit])}


def worked(one):
    figures, even, _ = opinion(one)
    changes = {basis: [{"cheaper_below": way, "depth": rounded(depth / FACTORS["ft"])} for way, depth in found] for basis, (_, found) in even.items()}
    return {"job": one, "figures": {path: told(path, value) for path, value in figures.items()}, "changes": changes}


def written():
    return json.dumps([worked(one) for one in JOBS], indent=1, ensure_ascii=False) + "\n"


if __name__ == "__main__":
    FILE.write_text(written(), encoding="utf-8")
