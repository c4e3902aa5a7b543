"""From the water to the power at the pump's shaft."""

from math import pi

from chemicals.iapws import iapws95_rho
from chemicals.viscosity import mu_IAPWS
from fluids.friction import Colebrook
from scipy.special import exp1

from units import GALLON, GRAVITY, INCH, si


def properties(celsius):
    """Density and kinematic viscosity of water at 0.1 MPa by the full formulations IAPWS-95 and R12-08."""
    kelvin = celsius + 273.15
    density = iapws95_rho(kelvin, 1e5)
    return density, mu_IAPWS(kelvin, density) / density


def flow(demand):
    """The flow that is asked for, m³/s."""
    if demand["by"] == "flow":
        return si(demand["flow"])
    seconds = si(demand["hours"])
    if demand["by"] == "land":
        depth = si(demand["depth"])
        if demand["depth_of"] == "net":
            depth /= si(demand["application_efficiency"])
        return si(demand["area"]) * depth / seconds
    users = [("people", "person"), ("beef", "beef"), ("dairy", "dairy"), ("horses", "horse")]
    return sum(si(demand[many]) * si(demand[f"{one}_daily"]) for many, one in users) / seconds


def drawdown(well, measured, q):
    """How far the water is drawn down at a flow, m."""
    if well["drawdown_by"] == "measured":
        return si(measured)
    if well["drawdown_by"] == "specific_capacity":
        return q / si(well["specific_capacity"])
    # Theis (1935), at the wall of the bore, with Jacob's (1947) loss of the well.
    transmissivity, radius = si(well["transmissivity"]), si(well["bore_diameter"]) / 2
    u = radius**2 * si(well["storage"]) / (4 * transmissivity * si(well["pumping_time"]))
    return q / (4 * pi * transmissivity) * exp1(u) + si(well["loss"]) * q**2


def colebrook(reynolds, relative):
    """Darcy's factor: laminar below 2,000, else by Colebrook and White (1939), by the general library."""
    if reynolds < 2000:
        return 64 / reynolds
    return Colebrook(reynolds, relative)


def section(q, length, inside, rough, coefficient, fittings, viscosity, method):
    """Head in straight pipe and in fittings, and the velocity head, m."""
    velocity = q / (pi / 4 * inside**2)
    head = velocity**2 / (2 * GRAVITY)
    if method == "hazen_williams":
        # Williams and Hazen as the trade tabulates it: feet in 100 ft, gpm, inches.
        gpm, inches = q / (GALLON / 60), inside / INCH
        lost = length * 0.2083 * (100 / coefficient) ** 1.852 * gpm**1.852 / inches**4.8655 / 100
    else:
        lost = colebrook(velocity * inside / viscosity, rough / inside) * length / inside * head
    return lost, fittings * head, head


def chain(job):
    """Everything from the flow to the shaft's power that an evaluation tells of a well."""
    line, site, well = job["line"], job["site"], job["well"]
    density, viscosity = properties(si(well["water_temperature"]))
    q = flow(job["demand"])
    down = drawdown(well, site.get("drawdown"), q)
    level = si(site["static_level"]) + down
    sections = [("drop", si(site["pump_setting"])), ("surface", si(line["surface_length"]))]
    pipe = fittings = velocity = 0.0
    for name, length in sections:
        lost, fitted, velocity = section(
            q, length, si(line[f"{name}_inside"]), si(line[f"{name}_roughness"]), si(line[f"{name}_hazen_williams"]),
            si(line[f"{name}_fittings"]), viscosity, line["friction"],
        )
        pipe += lost
        fittings += fitted
    pressure = si(line["pressure"]) / (density * GRAVITY)
    rise = si(line["rise"])
    total = level + rise + pipe + fittings + pressure + velocity
    # Water that runs by itself asks for no power.
    power = density * GRAVITY * q * max(total, 0.0)
    return {
        "flow": q,
        "drawdown": down,
        "pumping_level": level,
        "pipe": pipe,
        "fittings": fittings,
        "pressure": pressure,
        "velocity": velocity,
        "rise": rise,
        "total": total,
        "shaft": power / si(job["pump"]["efficiency"]),
        "water_power": power,
        "reynolds": min(q / (pi / 4 * si(line[f"{name}_inside"]) ** 2) * si(line[f"{name}_inside"]) / viscosity for name, _ in sections),
        "submergence": si(site["pump_setting"]) - level,
    }
