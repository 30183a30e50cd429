<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
<context>
    <name>AfterwardsPage</name>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>It is done</source>
        <translation>Está hecho</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Nothing that is on again waits to be adjusted, bled or tried.</source>
        <translation>Nada de lo que está montado espera ajuste, purga o prueba.</translation>
    </message>
    <message>
        <source>Nothing open</source>
        <translation>Nada pendiente</translation>
    </message>
    <message>
        <source>Why, if it is left out</source>
        <translation>Por qué, si se deja</translation>
    </message>
    <message>
        <source>goes home on a trailer</source>
        <translation>va a casa en remolque</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Dejado</translation>
    </message>
</context>
<context>
    <name>ApprovalPage</name>
    <message>
        <source>The owner&apos;s word</source>
        <translation>La palabra del dueño</translation>
    </message>
    <message>
        <source>The owner agrees</source>
        <translation>El dueño acepta</translation>
    </message>
    <message>
        <source>The owner does not want it</source>
        <translation>El dueño no lo quiere</translation>
    </message>
    <message>
        <source>Approval</source>
        <translation>Aprobación</translation>
    </message>
    <message>
        <source>For which work</source>
        <translation>Para qué trabajo</translation>
    </message>
    <message>
        <source>front brake, both tyres</source>
        <translation>freno delantero, los dos neumáticos</translation>
    </message>
    <message>
        <source>Up to which sum</source>
        <translation>Hasta qué importe</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
</context>
<context>
    <name>AsFoundPage</name>
    <message>
        <source>As found</source>
        <translation>Como llegó</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Otra foto</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Go on with the views</source>
        <translation>Seguir con las vistas</translation>
    </message>
    <message>
        <source>Pass over</source>
        <translation>Pasar</translation>
    </message>
    <message>
        <source>Every view is photographed or passed over.</source>
        <translation>Cada vista está fotografiada o pasada.</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Escribiendo</translation>
    </message>
    <message>
        <source>Reading it again</source>
        <translation>Releyendo</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Copiar ahora</translation>
    </message>
    <message>
        <source>Back up, sealed</source>
        <translation>Copiar, sellado</translation>
    </message>
    <message>
        <source>Last copy of the entries on this device: %1. It does not help when the phone is lost: put the whole shop into another place now and then.</source>
        <translation>Última copia de las entradas en este dispositivo: %1. No ayuda si se pierde el teléfono: guardar de vez en cuando todo el taller en otro sitio.</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Photos and memos</source>
        <translation>Fotos y notas</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Only new ones</source>
        <translation>Solo las nuevas</translation>
    </message>
    <message>
        <source>The backups that are there already are needed too when the shop is brought back.</source>
        <translation>Para recuperar el taller hacen falta también las copias que ya están ahí.</translation>
    </message>
    <message>
        <source>Without one, whoever finds the file can read it. A forgotten one cannot be got round.</source>
        <translation>Sin ella, quien encuentre el archivo puede leerlo. Si se olvida, no hay remedio.</translation>
    </message>
    <message>
        <source>Passphrase, if it is to be sealed</source>
        <translation>Frase secreta, si se sella</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Otra vez la misma</translation>
    </message>
</context>
<context>
    <name>BagEntry</name>
    <message>
        <source>in use: %1</source>
        <translation>en uso: %1</translation>
    </message>
    <message>
        <source>Number of the bag</source>
        <translation>Número de la bolsa</translation>
    </message>
</context>
<context>
    <name>BandPlot</name>
    <message>
        <source>%1; limits %2 to %3</source>
        <translation>%1; límites %2 a %3</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta %1</translation>
    </message>
</context>
<context>
    <name>CalcEntry</name>
    <message>
        <source>changes the sign</source>
        <translation>cambia el signo</translation>
    </message>
    <message>
        <source>+/−</source>
        <translation>+/−</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>cambia la unidad</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
</context>
<context>
    <name>CalcInputRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>from the job; tap to change</source>
        <translation>de la orden; tocar para cambiar</translation>
    </message>
    <message>
        <source>assumed; tap to change</source>
        <translation>supuesto; tocar para cambiar</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>puede quedar vacío</translation>
    </message>
</context>
<context>
    <name>CalcListPage</name>
    <message>
        <source>Calculations</source>
        <translation>Cálculos</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Palabras que buscar</translation>
    </message>
    <message>
        <source>words, such as torque or tyre</source>
        <translation>palabras como par o neumático</translation>
    </message>
    <message>
        <source>No calculation has these words. Try fewer, or only their beginnings.</source>
        <translation>Ningún cálculo tiene esas palabras. Probar con menos, o solo el principio.</translation>
    </message>
</context>
<context>
    <name>CalcMore</name>
    <message>
        <source>Hide: %1</source>
        <translation>Ocultar: %1</translation>
    </message>
</context>
<context>
    <name>CalcPage</name>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Keep in the job</source>
        <translation>Guardar en la orden</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Vaciar</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Ejemplo</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Datos</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Desarrollo</translation>
    </message>
    <message>
        <source>Formula, limits and sources</source>
        <translation>Fórmula, límites y fuentes</translation>
    </message>
</context>
<context>
    <name>CaptureFooter</name>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Disparar</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Nota a esta foto</translation>
    </message>
    <message numerus="yes">
        <source>Done, %n kept</source>
        <comment>photos</comment>
        <translation>
            <numerusform>Listo, %n guardada</numerusform>
            <numerusform>Listo, %n guardadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>CautionBox</name>
    <message>
        <source>Caution: %1</source>
        <translation>Cuidado: %1</translation>
    </message>
</context>
<context>
    <name>CheckWalkBody</name>
    <message>
        <source>Answered: %1</source>
        <translation>Respondido: %1</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Todos</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>falta %n</numerusform>
            <numerusform>faltan %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Abriendo la foto</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Leyendo los cables</translation>
    </message>
    <message>
        <source>Photo as it is now</source>
        <translation>Foto como está ahora</translation>
    </message>
    <message>
        <source>Wires as they are now</source>
        <translation>Cables como están ahora</translation>
    </message>
    <message>
        <source>When the stroke began at the last place</source>
        <translation>Si el trazo empezó en la última vía</translation>
    </message>
    <message>
        <source>Turn round</source>
        <translation>Dar la vuelta</translation>
    </message>
    <message>
        <source>Stroke again</source>
        <translation>Otro trazo</translation>
    </message>
    <message>
        <source>Wires that look alike cannot be told apart in a photo: a swap among twins is not seen.</source>
        <translation>En una foto no se distinguen cables iguales: un cambio entre gemelos no se ve.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Ahora tocar el último cable.</translation>
    </message>
    <message>
        <source>Stroke across the wires from place 1 on, or tap the first wire and then the last.</source>
        <translation>Pasar el dedo por los cables desde la vía 1, o tocar el primer cable y luego el último.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Photo before</source>
        <translation>Foto de antes</translation>
    </message>
    <message>
        <source>Compare with another photo</source>
        <translation>Comparar con otra foto</translation>
    </message>
</context>
<context>
    <name>ConsumablesPage</name>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluidos y grasa</translation>
    </message>
    <message>
        <source>Use it all the same</source>
        <translation>Usarlo igual</translation>
    </message>
    <message>
        <source>It goes in</source>
        <translation>Se pone</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluido</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Qué se pone</translation>
    </message>
    <message>
        <source>brake fluid</source>
        <translation>líquido de frenos</translation>
    </message>
    <message>
        <source>Grade on the container</source>
        <translation>Tipo en el envase</translation>
    </message>
    <message>
        <source>Grades that the machine allows</source>
        <translation>Tipos que admite el vehículo</translation>
    </message>
    <message>
        <source>DOT 3 or DOT 4, from the reservoir&apos;s lid</source>
        <translation>DOT 3 o DOT 4, de la tapa del depósito</translation>
    </message>
    <message>
        <source>Day on which the container was opened</source>
        <translation>Día en que se abrió el envase</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Went in</source>
        <translation>Puesto</translation>
    </message>
</context>
<context>
    <name>CostPage</name>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Reckon</source>
        <translation>Calcular</translation>
    </message>
    <message>
        <source>Add the line</source>
        <translation>Añadir la línea</translation>
    </message>
    <message>
        <source>Line of the cost</source>
        <translation>Línea del coste</translation>
    </message>
    <message>
        <source>One hour&apos;s work without tax</source>
        <translation>Una hora de trabajo sin impuesto</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Tax, per cent</source>
        <translation>Impuesto, por ciento</translation>
    </message>
    <message>
        <source>Another line</source>
        <translation>Otra línea</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Por qué concepto</translation>
    </message>
    <message>
        <source>tyre fitted outside</source>
        <translation>neumático montado fuera</translation>
    </message>
    <message>
        <source>Sum without tax</source>
        <translation>Importe sin impuesto</translation>
    </message>
    <message>
        <source>take out</source>
        <translation>quitar</translation>
    </message>
</context>
<context>
    <name>CostSum</name>
    <message>
        <source>without tax: %1</source>
        <translation>sin impuesto: %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Previsto: %1</translation>
    </message>
    <message>
        <source>It took: %1</source>
        <translation>Llevó: %1</translation>
    </message>
</context>
<context>
    <name>DraftRow</name>
    <message>
        <source>begun %1, not finished</source>
        <translation>empezado %1, sin acabar</translation>
    </message>
    <message>
        <source>%1, begun %2, not finished</source>
        <translation>%1, empezado %2, sin acabar</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Descartar</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Rechecks due</source>
        <translation>Revisiones pendientes</translation>
    </message>
    <message>
        <source>Rechecks with a number of days stand here from the hand-over on.</source>
        <translation>Las revisiones con un número de días están aquí desde la entrega.</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Nada vence</translation>
    </message>
    <message>
        <source>due</source>
        <translation>vence</translation>
    </message>
</context>
<context>
    <name>FindFilters</name>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>every machine</source>
        <translation>todos los vehículos</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Any</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>In the shop</source>
        <translation>En el taller</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Salió</translation>
    </message>
    <message>
        <source>Worked on</source>
        <translation>Trabajado</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>Siempre</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 días</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Un año</translation>
    </message>
    <message>
        <source>What kind?</source>
        <translation>¿Qué clase?</translation>
    </message>
    <message>
        <source>Which machine?</source>
        <translation>¿Qué vehículo?</translation>
    </message>
</context>
<context>
    <name>FindPage</name>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Words, or their beginnings</source>
        <translation>Palabras, o su principio</translation>
    </message>
    <message>
        <source>green pink ring</source>
        <translation>verde rosa anillo</translation>
    </message>
    <message>
        <source>Hide the filters</source>
        <translation>Ocultar los filtros</translation>
    </message>
    <message>
        <source>Filters (in use)</source>
        <translation>Filtros (en uso)</translation>
    </message>
    <message>
        <source>Filters</source>
        <translation>Filtros</translation>
    </message>
    <message>
        <source>Nothing found for these words. Try fewer, or only their beginnings.</source>
        <translation>Nada con esas palabras. Probar con menos, o solo el principio.</translation>
    </message>
</context>
<context>
    <name>FindingPage</name>
    <message>
        <source>New finding</source>
        <translation>Nuevo hallazgo</translation>
    </message>
    <message>
        <source>Correct the finding</source>
        <translation>Corregir el hallazgo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Qué se encontró</translation>
    </message>
    <message>
        <source>front brake hose cracked at the banjo</source>
        <translation>latiguillo delantero agrietado en el racor</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Gravedad</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>What to do about it</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>renew the hose, bleed the brake</source>
        <translation>cambiar el latiguillo, purgar el freno</translation>
    </message>
    <message>
        <source>How long it will take, in minutes</source>
        <translation>Cuánto llevará, en minutos</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Resuelto</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>Hacerlo tarea</translation>
    </message>
    <message>
        <source>Owner says no</source>
        <translation>El dueño dice no</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Who works here?</source>
        <translation>¿Quién trabaja aquí?</translation>
    </message>
    <message>
        <source>Each entry names who made it. Your name stays on this phone and in the records that you hand over.</source>
        <translation>Cada entrada dice quién la hizo. El nombre queda en este teléfono y en los informes que se entregan.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Tu nombre</translation>
    </message>
    <message>
        <source>as the owner will read it</source>
        <translation>como lo leerá el dueño</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
</context>
<context>
    <name>FunctionsPage</name>
    <message>
        <source>What works now</source>
        <translation>Qué funciona ahora</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Qué funciona</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Funciona</translation>
    </message>
    <message>
        <source>Does not</source>
        <translation>No va</translation>
    </message>
    <message>
        <source>Not tried</source>
        <translation>No probado</translation>
    </message>
    <message>
        <source>Everything has its answer.</source>
        <translation>Todo tiene respuesta.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>flickers, only when cold</source>
        <translation>parpadea, solo en frío</translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Undercowl controls</source>
        <translation>Controles de Undercowl</translation>
    </message>
    <message>
        <source>Next theme</source>
        <translation>Otro aspecto</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
</context>
<context>
    <name>GatheringActions</name>
    <message>
        <source>Read the wires</source>
        <translation>Leer los cables</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Releer</translation>
    </message>
</context>
<context>
    <name>GatheringForm</name>
    <message>
        <source>Connector</source>
        <translation>Conector</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Loose terminals</source>
        <translation>Terminales sueltos</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Empalme</translation>
    </message>
    <message>
        <source>Shared earth</source>
        <translation>Masa común</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Cómo se llama</translation>
    </message>
    <message>
        <source>right switch cluster</source>
        <translation>piña derecha</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Vías</translation>
    </message>
    <message>
        <source>Number of places</source>
        <translation>Número de vías</translation>
    </message>
    <message>
        <source>Rows of places</source>
        <translation>Filas de vías</translation>
    </message>
    <message>
        <source>Seen from: the numbers run the other way on the other side</source>
        <translation>Visto desde: en el otro lado los números van al revés</translation>
    </message>
    <message>
        <source>Wire side</source>
        <translation>Lado cables</translation>
    </message>
    <message>
        <source>Mating face</source>
        <translation>Cara de contacto</translation>
    </message>
    <message>
        <source>Latch or key</source>
        <translation>Cierre o guía</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
</context>
<context>
    <name>GatheringMap</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto de %1</translation>
    </message>
    <message>
        <source>Tap place 1 on the photo</source>
        <translation>Tocar la vía 1 en la foto</translation>
    </message>
    <message>
        <source>Place 1 is elsewhere</source>
        <translation>La vía 1 está en otro sitio</translation>
    </message>
    <message>
        <source>Mark place 1</source>
        <translation>Marcar la vía 1</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Mitad</translation>
    </message>
    <message>
        <source>Loom</source>
        <translation>Mazo</translation>
    </message>
    <message>
        <source>Switch, lamp or unit</source>
        <translation>Interruptor, lámpara o aparato</translation>
    </message>
</context>
<context>
    <name>GatheringPage</name>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>¿Qué es?</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Correct what it is</source>
        <translation>Corregir qué es</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand over</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Escribiendo el informe</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Escribiendo</translation>
    </message>
    <message>
        <source>Make the files again</source>
        <translation>Rehacer los archivos</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Hacer el informe</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>See to it</source>
        <translation>Atender</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Escrito</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Pruebas</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>To be told at hand-over</source>
        <translation>Para decir en la entrega</translation>
    </message>
    <message>
        <source>brake eased in, holds straight</source>
        <translation>freno asentado, frena recto</translation>
    </message>
    <message>
        <source>Old parts</source>
        <translation>Piezas viejas</translation>
    </message>
    <message>
        <source>given back in a bag</source>
        <translation>devueltas en una bolsa</translation>
    </message>
    <message>
        <source>Waste taken</source>
        <translation>Residuos recogidos</translation>
    </message>
    <message>
        <source>0.9 l oil, old battery</source>
        <translation>0,9 l de aceite, batería vieja</translation>
    </message>
    <message>
        <source>What the owner will read</source>
        <translation>Lo que leerá el dueño</translation>
    </message>
</context>
<context>
    <name>HardwareEntry</name>
    <message>
        <source>screw</source>
        <translation>tornillo</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>perno</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>tuerca</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>arandela</translation>
    </message>
    <message>
        <source>clip</source>
        <translation>grapa</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pasador</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Longitud, mm</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>flange nut</source>
        <translation>tuerca con arandela</translation>
    </message>
    <message>
        <source>Its thread</source>
        <translation>Su rosca</translation>
    </message>
    <message>
        <source>Its length, mm</source>
        <translation>Su longitud, mm</translation>
    </message>
    <message>
        <source>from the machine&apos;s manual; N.m unless another unit is typed</source>
        <translation>del manual del vehículo; N.m si no se escribe otra unidad</translation>
    </message>
    <message>
        <source>Torque on refit</source>
        <translation>Par de apriete</translation>
    </message>
</context>
<context>
    <name>HomePage</name>
    <message>
        <source>In the shop</source>
        <translation>En el taller</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Cálculos</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Take in the first machine: what it is, whose it is, why it is here.</source>
        <translation>Recibir el primer vehículo: qué es, de quién es, por qué está aquí.</translation>
    </message>
    <message>
        <source>The shop is empty</source>
        <translation>El taller está vacío</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Machines handed over before these are found by Find.</source>
        <translation>Los entregados antes de estos se encuentran con Buscar.</translation>
    </message>
</context>
<context>
    <name>InstrumentForm</name>
    <message>
        <source>Name, as the shop calls it</source>
        <translation>Nombre, como se le llama en el taller</translation>
    </message>
    <message>
        <source>wrench red</source>
        <translation>llave roja</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>Choose the kind</source>
        <translation>Elegir la clase</translation>
    </message>
    <message>
        <source>Largest reading, with its unit</source>
        <translation>Mayor lectura, con su unidad</translation>
    </message>
    <message>
        <source>Least reading</source>
        <translation>Menor lectura</translation>
    </message>
    <message>
        <source>One division, or the last digit</source>
        <translation>Una división, o la última cifra</translation>
    </message>
    <message>
        <source>Type and class by ISO 6789-1</source>
        <translation>Tipo y clase según ISO 6789-1</translation>
    </message>
    <message>
        <source>Class by EN 837-1, as on the dial</source>
        <translation>Clase según EN 837-1, como en la esfera</translation>
    </message>
    <message>
        <source>Limit of error: per cent of the reading</source>
        <translation>Límite de error: por ciento de la lectura</translation>
    </message>
    <message>
        <source>and digits</source>
        <translation>y dígitos</translation>
    </message>
    <message>
        <source>and a fixed part</source>
        <translation>y una parte fija</translation>
    </message>
    <message>
        <source>Feel of the hand: half of what two people read differently</source>
        <translation>Tacto de la mano: la mitad de lo que dos personas leen distinto</translation>
    </message>
    <message>
        <source>Where the limit of error stands</source>
        <translation>Dónde consta el límite de error</translation>
    </message>
    <message>
        <source>maker&apos;s sheet</source>
        <translation>hoja del fabricante</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Calibrado el</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>Toca de nuevo el</translation>
    </message>
    <message>
        <source>Kind of instrument</source>
        <translation>Clase de instrumento</translation>
    </message>
</context>
<context>
    <name>InstrumentPage</name>
    <message>
        <source>New instrument</source>
        <translation>Nuevo instrumento</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Use it again</source>
        <translation>Usarlo otra vez</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Ya no se usa</translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Añadir un instrumento</translation>
    </message>
    <message>
        <source>An instrument with its limit of error gives readings their verdict. Until the shop has its own, ordinary ones with assumed limits can be chosen.</source>
        <translation>Un instrumento con su límite de error da el veredicto a las lecturas. Hasta que el taller tenga los suyos se pueden elegir corrientes con límites supuestos.</translation>
    </message>
    <message>
        <source>No instruments of the shop yet</source>
        <translation>Aún sin instrumentos del taller</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Ya no se usa</translation>
    </message>
</context>
<context>
    <name>JobActions</name>
    <message>
        <source>Photos as found</source>
        <translation>Fotos como llegó</translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Montar</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Desmontar</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
</context>
<context>
    <name>JobMemos</name>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>what must not be forgotten</source>
        <translation>lo que no hay que olvidar</translation>
    </message>
    <message>
        <source>Keep the memo</source>
        <translation>Guardar la nota</translation>
    </message>
</context>
<context>
    <name>JobPage</name>
    <message>
        <source>Unsafe and open: %1</source>
        <translation>Peligro sin resolver: %1</translation>
    </message>
    <message>
        <source>Came back: the job before</source>
        <translation>Volvió: la orden anterior</translation>
    </message>
    <message numerus="yes">
        <source>%n to do</source>
        <comment>afterwards</comment>
        <translation>
            <numerusform>%n por hacer</numerusform>
            <numerusform>%n por hacer</numerusform>
        </translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Después: ajustar, purgar, probar</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Pruebas</translation>
    </message>
    <message>
        <source>Photos as found, view by view</source>
        <translation>Fotos como llegó, vista por vista</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Qué funciona</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>findings</comment>
        <translation>
            <numerusform>%n pendiente</numerusform>
            <numerusform>%n pendientes</numerusform>
        </translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>The owner&apos;s word on the cost</source>
        <translation>La palabra del dueño sobre el coste</translation>
    </message>
    <message numerus="yes">
        <source>%n to come</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%n por llegar</numerusform>
            <numerusform>%n por llegar</numerusform>
        </translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Recambios</translation>
    </message>
    <message>
        <source>What the shop knows of this model</source>
        <translation>Qué sabe el taller de este modelo</translation>
    </message>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluidos y grasa</translation>
    </message>
    <message>
        <source>Machine and owner</source>
        <translation>Vehículo y dueño</translation>
    </message>
    <message>
        <source>Labels for the bags</source>
        <translation>Etiquetas para las bolsas</translation>
    </message>
    <message>
        <source>In the bags</source>
        <translation>En las bolsas</translation>
    </message>
</context>
<context>
    <name>JobRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto de %1</translation>
    </message>
</context>
<context>
    <name>JobTasks</name>
    <message>
        <source>Tasks</source>
        <translation>Tareas</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>del</source>
        <comment>erases the last digit</comment>
        <translation>borr</translation>
    </message>
</context>
<context>
    <name>KnowledgePage</name>
    <message>
        <source>Write the file for other shops</source>
        <translation>Escribir el archivo para otros talleres</translation>
    </message>
    <message>
        <source>A touch takes a line over into the open job. Nothing enters it by itself.</source>
        <translation>Un toque lleva una línea a la orden abierta. Nada entra solo.</translation>
    </message>
    <message>
        <source>Open a job of this model to take lines over.</source>
        <translation>Abrir una orden de este modelo para llevar líneas.</translation>
    </message>
    <message>
        <source>Written, without anything of any owner: %1</source>
        <translation>Escrito, sin nada de ningún dueño: %1</translation>
    </message>
    <message>
        <source>Limits, torques, parts that fitted or not, wiring maps and times of other jobs will stand here.</source>
        <translation>Aquí estarán límites, pares, recambios que valieron o no, planos de cables y tiempos de otras órdenes.</translation>
    </message>
    <message>
        <source>Nothing known of this model yet</source>
        <translation>Aún no se sabe nada de este modelo</translation>
    </message>
    <message>
        <source>take</source>
        <translation>llevar</translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Labels for the bags</source>
        <translation>Etiquetas para las bolsas</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Hacer la hoja</translation>
    </message>
    <message>
        <source>Steps that were bagged while stripping stand here.</source>
        <translation>Aquí están los pasos embolsados al desmontar.</translation>
    </message>
    <message>
        <source>No bags yet</source>
        <translation>Aún sin bolsas</translation>
    </message>
    <message>
        <source>Written: %1. Print it at 100 %.</source>
        <translation>Escrito: %1. Imprimir al 100 %.</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>A4, 3 × 8</source>
        <translation>A4, 3 × 8</translation>
    </message>
    <message>
        <source>Letter, 3 × 10</source>
        <translation>Letter, 3 × 10</translation>
    </message>
    <message>
        <source>Place of the first label</source>
        <translation>Sitio de la primera etiqueta</translation>
    </message>
</context>
<context>
    <name>LimitsEntry</name>
    <message>
        <source>What was measured</source>
        <translation>Qué se midió</translation>
    </message>
    <message>
        <source>rear axle nut, torque</source>
        <translation>tuerca del eje trasero, par</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>número solo</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Los instrumentos del taller</translation>
    </message>
    <message>
        <source>At least, %1</source>
        <translation>Al menos, %1</translation>
    </message>
    <message>
        <source>At most, %1</source>
        <translation>Como mucho, %1</translation>
    </message>
    <message>
        <source>Where the limits come from</source>
        <translation>De dónde vienen los límites</translation>
    </message>
    <message>
        <source>Page or place</source>
        <translation>Página o lugar</translation>
    </message>
    <message>
        <source>page 7-12</source>
        <translation>página 7-12</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
</context>
<context>
    <name>LookOverPage</name>
    <message>
        <source>Look over</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>Photo as found</source>
        <translation>Foto como llegó</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Como llegó</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Brakes, tyres, play in the steering, leaks, wiring: note what is not as it should be.</source>
        <translation>Frenos, neumáticos, juego de dirección, fugas, cables: anotar lo que no está como debe.</translation>
    </message>
    <message>
        <source>Nothing found yet</source>
        <translation>Aún nada encontrado</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Resuelto</translation>
    </message>
</context>
<context>
    <name>MeasureActions</name>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Keep mean</source>
        <translation>Guardar la media</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>MeasureMore</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>una de varias; tocar para quitarla</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Desarrollo</translation>
    </message>
</context>
<context>
    <name>MeasurePage</name>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>What and how</source>
        <translation>Qué y con qué</translation>
    </message>
    <message>
        <source>To the value</source>
        <translation>Al valor</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Lecturas hasta ahora</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>at: %1 · %2</source>
        <translation>en: %1 · %2</translation>
    </message>
    <message>
        <source>What is measured?</source>
        <translation>¿Qué se mide?</translation>
    </message>
</context>
<context>
    <name>MeasureValue</name>
    <message>
        <source>Value in %1</source>
        <translation>Valor en %1</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>cambia la unidad</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
</context>
<context>
    <name>Measuring</name>
    <message>
        <source>at rest</source>
        <translation>en reposo</translation>
    </message>
    <message>
        <source>at idle</source>
        <translation>al ralentí</translation>
    </message>
    <message>
        <source>at revs</source>
        <translation>con revoluciones</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type the value on the keypad.</source>
        <translation>Escribir el valor en las teclas.</translation>
    </message>
    <message>
        <source>Say where the limits come from.</source>
        <translation>Decir de dónde vienen los límites.</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>número solo</translation>
    </message>
    <message>
        <source>Type what was measured, such as &quot;rear axle nut, torque&quot;.</source>
        <translation>Escribir qué se midió, por ejemplo &quot;tuerca del eje trasero, par&quot;.</translation>
    </message>
    <message>
        <source>%1, torque</source>
        <translation>%1, par</translation>
    </message>
    <message>
        <source>to be %1, as the step says</source>
        <translation>debe ser %1, según el paso</translation>
    </message>
    <message>
        <source>next after: %1</source>
        <translation>tras: %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
</context>
<context>
    <name>MemoPage</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note to a photo</source>
        <translation>Nota a una foto</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Nota a esta foto</translation>
    </message>
    <message>
        <source>what must not be forgotten</source>
        <translation>lo que no hay que olvidar</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Guardadas hasta ahora</translation>
    </message>
</context>
<context>
    <name>ModelsPage</name>
    <message>
        <source>What the shop knows</source>
        <translation>Qué sabe el taller</translation>
    </message>
    <message>
        <source>Learn from the file</source>
        <translation>Aprender del archivo</translation>
    </message>
    <message>
        <source>Learn from another shop</source>
        <translation>Aprender de otro taller</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Aprendido: %1</translation>
    </message>
    <message>
        <source>Its file</source>
        <translation>Su archivo</translation>
    </message>
</context>
<context>
    <name>MorePage</name>
    <message>
        <source>The shop</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>What the shop knows</source>
        <translation>Qué sabe el taller</translation>
    </message>
    <message>
        <source>Scan a bag or a part</source>
        <translation>Escanear bolsa o recambio</translation>
    </message>
    <message>
        <source>Spreadsheets in and out</source>
        <translation>Hojas de cálculo</translation>
    </message>
    <message>
        <source>Rechecks due</source>
        <translation>Revisiones pendientes</translation>
    </message>
</context>
<context>
    <name>NeedsPage</name>
    <message>
        <source>To put it back</source>
        <translation>Para montarlo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>New every time, one a line</source>
        <translation>Nuevo cada vez, uno por línea</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation>pasador de aletas</translation>
    </message>
    <message>
        <source>What goes on it</source>
        <translation>Qué lleva</translation>
    </message>
    <message>
        <source>grease, thread lock, none</source>
        <translation>grasa, fijador de roscas, nada</translation>
    </message>
    <message>
        <source>To adjust, bleed or try afterwards, one a line</source>
        <translation>Por ajustar, purgar o probar después, uno por línea</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>purgar el freno hasta que la maneta quede dura</translation>
    </message>
    <message>
        <source>Do not start until it is done</source>
        <translation>No arrancar antes de hacerlo</translation>
    </message>
    <message>
        <source>Do not ride until it is done</source>
        <translation>No circular antes de hacerlo</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
</context>
<context>
    <name>NeedsPanel</name>
    <message>
        <source>Nothing follows from the words of the step. Look in the manual.</source>
        <translation>De las palabras del paso no sale nada. Mirar el manual.</translation>
    </message>
    <message>
        <source>Suggested by the words of the step: common practice. The manual comes first.</source>
        <translation>Propuesto por las palabras del paso: práctica común. El manual va primero.</translation>
    </message>
    <message>
        <source>To put it back</source>
        <translation>Para montarlo</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Nuevo: %1</translation>
    </message>
    <message>
        <source>Goes on it: %1</source>
        <translation>Lleva: %1</translation>
    </message>
    <message>
        <source>Afterwards: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>As you set it.</source>
        <translation>Como lo pusiste tú.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
</context>
<context>
    <name>OrdersPage</name>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copiar la lista</translation>
    </message>
    <message>
        <source>Text, spreadsheet, PDF</source>
        <translation>Texto, hoja, PDF</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Escrito</translation>
    </message>
    <message>
        <source>Parts that are wanted or asked for stand here until they are ordered.</source>
        <translation>Los recambios deseados o consultados están aquí hasta que se piden.</translation>
    </message>
    <message>
        <source>Nothing to order</source>
        <translation>Nada por pedir</translation>
    </message>
</context>
<context>
    <name>OwnersAnswer</name>
    <message>
        <source>Who said so</source>
        <translation>Quién lo dijo</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>PartPage</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Recambio</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué fue de él</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Other makers&apos; numbers</source>
        <translation>Números de otros fabricantes</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Precio sin impuesto</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>nothing chosen</source>
        <translation>nada elegido</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Para qué es</translation>
    </message>
    <message>
        <source>Does it fit this model?</source>
        <translation>¿Vale para este modelo?</translation>
    </message>
    <message>
        <source>Why not, or after what change</source>
        <translation>Por qué no, o tras qué cambio</translation>
    </message>
    <message>
        <source>pivot hole 1 mm too small</source>
        <translation>agujero del eje 1 mm pequeño</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>from whom, by when</source>
        <translation>de quién, para cuándo</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>¿Para qué es?</translation>
    </message>
</context>
<context>
    <name>PartsPage</name>
    <message>
        <source>Parts</source>
        <translation>Recambios</translation>
    </message>
    <message>
        <source>Add the part</source>
        <translation>Añadir el recambio</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Recambio</translation>
    </message>
    <message>
        <source>Another part</source>
        <translation>Otro recambio</translation>
    </message>
    <message>
        <source>switch cluster, right</source>
        <translation>piña derecha</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>from whom, by when</source>
        <translation>de quién, para cuándo</translation>
    </message>
    <message>
        <source>Supplier, price, fit …</source>
        <translation>Proveedor, precio …</translation>
    </message>
    <message>
        <source>What became of it?</source>
        <translation>¿Qué fue de él?</translation>
    </message>
</context>
<context>
    <name>PhotoFrame</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>This photo cannot be shown. Its file may be damaged.</source>
        <translation>Esta foto no se puede mostrar. Quizá su archivo esté dañado.</translation>
    </message>
    <message>
        <source>Loading photo</source>
        <translation>Cargando la foto</translation>
    </message>
</context>
<context>
    <name>PhotoViewer</name>
    <message>
        <source>Closer</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Entera</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>PicturePicker</name>
    <message>
        <source>Folder above %1</source>
        <translation>Carpeta encima de %1</translation>
    </message>
    <message>
        <source>Looking for pictures</source>
        <translation>Buscando imágenes</translation>
    </message>
    <message>
        <source>No pictures here</source>
        <translation>Aquí no hay imágenes</translation>
    </message>
</context>
<context>
    <name>PlaceDetails</name>
    <message>
        <source>terminal</source>
        <translation>terminal</translation>
    </message>
    <message>
        <source>Size of the terminal, mm</source>
        <translation>Tamaño del terminal, mm</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Para qué es</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>luz de freno</translation>
    </message>
    <message>
        <source>terminal number by DIN 72552</source>
        <translation>número de borne DIN 72552</translation>
    </message>
    <message>
        <source>No number</source>
        <translation>Sin número</translation>
    </message>
    <message>
        <source>Size of the wire, mm²</source>
        <translation>Sección del cable, mm²</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Terminal</translation>
    </message>
    <message>
        <source>Terminal number by DIN 72552</source>
        <translation>Número de borne DIN 72552</translation>
    </message>
</context>
<context>
    <name>PlacePage</name>
    <message>
        <source>as found</source>
        <translation>como llegó</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>como debe ser</translation>
    </message>
    <message>
        <source>Nothing there</source>
        <translation>Ahí no hay nada</translation>
    </message>
    <message>
        <source>Another colour</source>
        <translation>Otro color</translation>
    </message>
    <message>
        <source>Pick the colour</source>
        <translation>Elegir el color</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Which answer</source>
        <translation>Qué respuesta</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Como llegó</translation>
    </message>
    <message>
        <source>As it should be</source>
        <translation>Como debe ser</translation>
    </message>
    <message>
        <source>As found: %1. As it should be: %2.</source>
        <translation>Como llegó: %1. Como debe ser: %2.</translation>
    </message>
    <message>
        <source>Where that is known from</source>
        <translation>De dónde se sabe</translation>
    </message>
    <message>
        <source>manual, page 7-12</source>
        <translation>manual, página 7-12</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>As refitted: %1</source>
        <translation>Al montar: %1</translation>
    </message>
</context>
<context>
    <name>PlaceRow</name>
    <message>
        <source>refitted</source>
        <translation>montado</translation>
    </message>
</context>
<context>
    <name>Plugin</name>
    <message>
        <source>A part of this program is missing or damaged (%1). Install it again; what is kept in the shop stays as it is.</source>
        <translation>Falta o está dañada una parte del programa (%1). Instalarlo otra vez; lo guardado en el taller queda como está.</translation>
    </message>
</context>
<context>
    <name>Pressable</name>
    <message>
        <source>Working</source>
        <translation>En curso</translation>
    </message>
</context>
<context>
    <name>ProblemPanel</name>
    <message>
        <source>Try again</source>
        <translation>Probar otra vez</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leído</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>ProvePage</name>
    <message>
        <source>Prove</source>
        <translation>Pruebas</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Probado</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>What is taken apart and put together again is proved here.</source>
        <translation>Aquí se prueba lo desmontado y vuelto a montar.</translation>
    </message>
    <message>
        <source>Nothing was disturbed</source>
        <translation>No se tocó nada</translation>
    </message>
    <message>
        <source>Everything that was disturbed is proved, or left out for a reason.</source>
        <translation>Todo lo tocado está probado, o dejado con motivo.</translation>
    </message>
    <message>
        <source>How, or why it is left out</source>
        <translation>Cómo, o por qué se deja</translation>
    </message>
    <message>
        <source>read aloud and matched</source>
        <translation>releído en voz alta y coincide</translation>
    </message>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n sin montar: aún no se puede probar</numerusform>
            <numerusform>%n sin montar: aún no se pueden probar</numerusform>
        </translation>
    </message>
    <message>
        <source>A second pair of eyes</source>
        <translation>Otro par de ojos</translation>
    </message>
    <message>
        <source>What works now, beside what worked before</source>
        <translation>Qué funciona ahora, junto a lo de antes</translation>
    </message>
    <message>
        <source>Road test and rechecks</source>
        <translation>Prueba en carretera y revisiones</translation>
    </message>
</context>
<context>
    <name>ReadAloud</name>
    <message>
        <source>Say again</source>
        <translation>Repetir</translation>
    </message>
    <message>
        <source>Says it again, more slowly; after the slowest comes the usual pace</source>
        <translation>Lo repite más despacio; tras lo más lento vuelve el paso normal</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Más lento</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Dice solo su color</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Solo el cable</translation>
    </message>
    <message>
        <source>Hearing</source>
        <translation>Oyendo</translation>
    </message>
    <message>
        <source>While it is held, say done, does not match, next, back, again, slower, undo or stop</source>
        <translation>Mientras se pulsa, decir en inglés done, does not match, next, back, again, slower, undo o stop</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>Escuchando</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Pulsar y hablar</translation>
    </message>
</context>
<context>
    <name>ReadBackActions</name>
    <message>
        <source>Does not match</source>
        <translation>No coincide</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the wire before</comment>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Begins with the first wire again</source>
        <translation>Empieza otra vez por el primer cable</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>To the next wire; nothing is said of this one</source>
        <translation>Al cable siguiente; de este no se dice nada</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Saltar</translation>
    </message>
</context>
<context>
    <name>ReadBackChoice</name>
    <message>
        <source>Stop: the two answers differ. Which one holds?</source>
        <translation>Alto: las dos respuestas difieren. ¿Cuál vale?</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ReadBackEnd</name>
    <message>
        <source>Finish</source>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Compare photos</source>
        <translation>Comparar fotos</translation>
    </message>
</context>
<context>
    <name>ReadBackMismatch</name>
    <message>
        <source>Written down: %1 does not match.</source>
        <translation>Anotado: %1 no coincide.</translation>
    </message>
    <message>
        <source>Swapped</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Next wire</source>
        <translation>Cable siguiente</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Mirar otra vez</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>¿Cambiado con cuál?</translation>
    </message>
</context>
<context>
    <name>ReadBackPage</name>
    <message>
        <source>Read silently</source>
        <translation>Leer en silencio</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leer en voz alta</translation>
    </message>
    <message>
        <source>Read the unit half</source>
        <translation>Leer el lado aparato</translation>
    </message>
    <message>
        <source>Read the loom half</source>
        <translation>Leer el lado mazo</translation>
    </message>
    <message>
        <source>No wire of the loom half was confirmed when it was stripped.</source>
        <translation>Al desmontar no se confirmó ningún cable del lado mazo.</translation>
    </message>
    <message>
        <source>No wire of the unit half was confirmed when it was stripped.</source>
        <translation>Al desmontar no se confirmó ningún cable del lado aparato.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Nada que releer</translation>
    </message>
    <message>
        <source>%1 of %2 wires match</source>
        <translation>%1 de %2 cables coinciden</translation>
    </message>
    <message>
        <source>%1 do not match. Put them right and read back again.</source>
        <translation>%1 no coinciden. Ponerlos bien y releer.</translation>
    </message>
    <message>
        <source>%1 were not checked.</source>
        <translation>%1 no se comprobaron.</translation>
    </message>
    <message>
        <source>Each wire was seen in its place.</source>
        <translation>Cada cable se vio en su sitio.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Foto, %1 marcada</translation>
    </message>
    <message>
        <source>checked before: matches</source>
        <translation>ya comprobado: coincide</translation>
    </message>
    <message>
        <source>checked before: does not match</source>
        <translation>ya comprobado: no coincide</translation>
    </message>
</context>
<context>
    <name>ReadingRow</name>
    <message>
        <source>no verdict</source>
        <translation>sin veredicto</translation>
    </message>
    <message>
        <source>Shows the curve of its readings</source>
        <translation>Muestra la curva de sus lecturas</translation>
    </message>
    <message>
        <source>no verdict: limits or the instrument&apos;s uncertainty are not known</source>
        <translation>sin veredicto: no se conocen los límites o la incertidumbre del instrumento</translation>
    </message>
    <message>
        <source>Measured once so far: a second reading makes a curve.</source>
        <translation>Medido una vez: con una segunda lectura hay curva.</translation>
    </message>
</context>
<context>
    <name>ReadingsPage</name>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Cálculos</translation>
    </message>
    <message>
        <source>Each value that is kept stands here with its limits and its verdict.</source>
        <translation>Cada valor guardado está aquí con sus límites y su veredicto.</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Aún nada medido</translation>
    </message>
</context>
<context>
    <name>RefitPage</name>
    <message>
        <source>Refit</source>
        <translation>Montar</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Is refitted</source>
        <translation>Está montado</translation>
    </message>
    <message>
        <source>Refitted</source>
        <translation>Montado</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Nothing was stripped, so nothing is to be refitted.</source>
        <translation>No se desmontó nada, así que no hay nada que montar.</translation>
    </message>
    <message>
        <source>All %1 steps are on again. Measure, prove, then hand over.</source>
        <translation>Los %1 pasos están montados. Medir, probar y entregar.</translation>
    </message>
    <message>
        <source>Nothing to refit</source>
        <translation>Nada que montar</translation>
    </message>
    <message>
        <source>All refitted</source>
        <translation>Todo montado</translation>
    </message>
    <message>
        <source>Every task that is left waits. Under Steps each can be refitted all the same.</source>
        <translation>Cada tarea que queda espera. En Pasos se puede montar igualmente.</translation>
    </message>
    <message>
        <source>All else waits</source>
        <translation>Lo demás espera</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Foto de %1 al desmontar</translation>
    </message>
    <message>
        <source>Not yet: first %1</source>
        <translation>Aún no: primero %1</translation>
    </message>
    <message>
        <source>This task waits for %1</source>
        <translation>Esta tarea espera %1</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Ya no espera</translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Después: ajustar, purgar, probar</translation>
    </message>
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Pasos de montaje</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>espera %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
</context>
<context>
    <name>RefusalPage</name>
    <message>
        <source>The owner says no</source>
        <translation>El dueño dice no</translation>
    </message>
    <message>
        <source>Keep the refusal</source>
        <translation>Guardar la negativa</translation>
    </message>
    <message>
        <source>Refusal</source>
        <translation>Negativa</translation>
    </message>
    <message>
        <source>Unsafe: %1</source>
        <translation>Peligro: %1</translation>
    </message>
    <message>
        <source>The finding stays open. The record will say in bold that you told the owner, who refused, and on which day. Local law may forbid handing over an unsafe machine.</source>
        <translation>El hallazgo queda pendiente. El informe dirá en negrita que se avisó al dueño y se negó, y qué día. La ley local puede prohibir entregar un vehículo inseguro.</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>Con las palabras del dueño</translation>
    </message>
    <message>
        <source>will fetch it with a trailer</source>
        <translation>lo recogerá con remolque</translation>
    </message>
</context>
<context>
    <name>RoadPage</name>
    <message>
        <source>Road test and rechecks</source>
        <translation>Prueba en carretera y revisiones</translation>
    </message>
    <message>
        <source>Keep the road test</source>
        <translation>Guardar la prueba</translation>
    </message>
    <message>
        <source>Keep the recheck</source>
        <translation>Guardar la revisión</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Prueba en carretera</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Ridden, km</source>
        <translation>Recorrido, km</translation>
    </message>
    <message>
        <source>What it was like</source>
        <translation>Cómo fue</translation>
    </message>
    <message>
        <source>holds straight, idles hot</source>
        <translation>va recto, buen ralentí en caliente</translation>
    </message>
    <message>
        <source>To be looked at again</source>
        <translation>Por mirar otra vez</translation>
    </message>
    <message>
        <source>due</source>
        <translation>vence</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>rear axle nut</source>
        <translation>tuerca del eje trasero</translation>
    </message>
    <message>
        <source>After km</source>
        <translation>Tras km</translation>
    </message>
    <message>
        <source>Or after days</source>
        <translation>O tras días</translation>
    </message>
</context>
<context>
    <name>RollingCopy</name>
    <message>
        <source>The daily copy of the shop could not be made; what you enter is still kept. %1</source>
        <translation>No se pudo hacer la copia diaria del taller; lo que se escribe se guarda igual. %1</translation>
    </message>
</context>
<context>
    <name>RoundListPage</name>
    <message>
        <source>Add the check</source>
        <translation>Añadir el control</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiarlo</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Quitarlo</translation>
    </message>
    <message>
        <source>Another check</source>
        <translation>Otro control</translation>
    </message>
    <message>
        <source>The check</source>
        <translation>El control</translation>
    </message>
    <message>
        <source>lever: firm, does not creep</source>
        <translation>maneta: firme, no cede</translation>
    </message>
    <message>
        <source>Part of the machine</source>
        <translation>Parte del vehículo</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno delantero</translation>
    </message>
</context>
<context>
    <name>RoundListsPage</name>
    <message>
        <source>Lists of checks</source>
        <translation>Listas de controles</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Sin hacer</translation>
    </message>
    <message>
        <source>Every check of this round has its answer.</source>
        <translation>Cada control de esta ronda tiene respuesta.</translation>
    </message>
</context>
<context>
    <name>RoundsPage</name>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message>
        <source>Begin the round</source>
        <translation>Empezar la ronda</translation>
    </message>
    <message>
        <source>A new round: what does the machine have?</source>
        <translation>Nueva ronda: ¿qué tiene el vehículo?</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Two-stroke</source>
        <translation>Dos tiempos</translation>
    </message>
    <message>
        <source>Four-stroke</source>
        <translation>Cuatro tiempos</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Transmisión</translation>
    </message>
    <message>
        <source>Gears</source>
        <translation>De marchas</translation>
    </message>
    <message>
        <source>Automatic</source>
        <translation>Automático</translation>
    </message>
    <message>
        <source>Starts by</source>
        <translation>Arranca por</translation>
    </message>
    <message>
        <source>Kick</source>
        <translation>Pedal</translation>
    </message>
    <message>
        <source>Electric</source>
        <translation>Eléctrico</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Los dos</translation>
    </message>
    <message>
        <source>Front brake</source>
        <translation>Freno delantero</translation>
    </message>
    <message>
        <source>Drum</source>
        <translation>Tambor</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Disco</translation>
    </message>
    <message>
        <source>Rear brake</source>
        <translation>Freno trasero</translation>
    </message>
</context>
<context>
    <name>SavedMark</name>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Scan</source>
        <translation>Escanear</translation>
    </message>
    <message>
        <source>Look for the number</source>
        <translation>Buscar el número</translation>
    </message>
    <message>
        <source>Hold the code of a bag or a part before the camera.</source>
        <translation>Poner el código de una bolsa o un recambio ante la cámara.</translation>
    </message>
    <message>
        <source>Or type the number</source>
        <translation>O escribir el número</translation>
    </message>
</context>
<context>
    <name>SecondEyesPage</name>
    <message>
        <source>Second pair of eyes</source>
        <translation>Otro par de ojos</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering and suspension that were disturbed and are on again can be signed here.</source>
        <translation>Aquí se firman frenos, ruedas, dirección y suspensión tocados y ya montados.</translation>
    </message>
    <message>
        <source>Nothing to sign</source>
        <translation>Nada que firmar</translation>
    </message>
    <message>
        <source>Whoever did not do the work looks at it and signs by a touch.</source>
        <translation>Quien no hizo el trabajo lo mira y firma con un toque.</translation>
    </message>
    <message>
        <source>Who looks</source>
        <translation>Quién mira</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Noche</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>The voice of a Linux device, and what is spoken to it, are English.</source>
        <translation>La voz de un dispositivo Linux y lo que se le dice son en inglés.</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Hand that holds the phone</source>
        <translation>Mano que sujeta el teléfono</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>How you see colours</source>
        <translation>Cómo ves los colores</translation>
    </message>
    <message>
        <source>As most do</source>
        <translation>Como la mayoría</translation>
    </message>
    <message>
        <source>Red weak</source>
        <translation>Poco el rojo</translation>
    </message>
    <message>
        <source>Green weak</source>
        <translation>Poco el verde</translation>
    </message>
    <message>
        <source>Blue weak</source>
        <translation>Poco el azul</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>A little</source>
        <translation>Un poco</translation>
    </message>
    <message>
        <source>Much</source>
        <translation>Mucho</translation>
    </message>
    <message>
        <source>Movement on the screen</source>
        <translation>Movimiento en la pantalla</translation>
    </message>
    <message>
        <source>Some</source>
        <translation>Algo</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>Where a photo was taken</source>
        <translation>Dónde se hizo una foto</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Dejado</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Se guarda</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Los instrumentos del taller</translation>
    </message>
    <message>
        <source>The shop&apos;s lists of checks</source>
        <translation>Las listas de controles del taller</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Quién trabaja aquí</translation>
    </message>
    <message>
        <source>Work as %1</source>
        <translation>Trabajar como %1</translation>
    </message>
</context>
<context>
    <name>SeverityMark</name>
    <message>
        <source>unsafe</source>
        <translation>peligro</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Spreadsheets</source>
        <translation>Hojas de cálculo</translation>
    </message>
    <message>
        <source>Bring in: %1</source>
        <translation>Traer: %1</translation>
    </message>
    <message>
        <source>Look at the file</source>
        <translation>Mirar el archivo</translation>
    </message>
    <message>
        <source>Write everything</source>
        <translation>Escribirlo todo</translation>
    </message>
    <message>
        <source>A sheet of machines has make and model in its head, one of parts has job and part.</source>
        <translation>Una hoja de vehículos lleva make y model en la cabecera; una de recambios, job y part.</translation>
    </message>
    <message>
        <source>File to bring in (CSV)</source>
        <translation>Archivo que traer (CSV)</translation>
    </message>
    <message>
        <source>Not brought in: %1</source>
        <translation>Sin traer: %1</translation>
    </message>
    <message>
        <source>Lines brought in: %1</source>
        <translation>Líneas traídas: %1</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Escrito</translation>
    </message>
</context>
<context>
    <name>ShopWindow</name>
    <message>
        <source>Undercowl</source>
        <translation>Undercowl</translation>
    </message>
</context>
<context>
    <name>SignaturePage</name>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Keep the signature</source>
        <translation>Guardar la firma</translation>
    </message>
    <message>
        <source>Wipe it</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>The machine was handed over with its record, and its cautions were read.</source>
        <translation>El vehículo se entregó con su informe, y sus avisos se leyeron.</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Quién firma</translation>
    </message>
    <message>
        <source>Field to sign in</source>
        <translation>Campo para firmar</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Firmado: %1</translation>
    </message>
</context>
<context>
    <name>Snackbar</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>StepsPage</name>
    <message>
        <source>Steps so far</source>
        <translation>Pasos hasta ahora</translation>
    </message>
    <message>
        <source>Each step that is stripped stands here, the last one first.</source>
        <translation>Cada paso desmontado está aquí, el último primero.</translation>
    </message>
    <message>
        <source>Nothing stripped yet</source>
        <translation>Aún nada desmontado</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>montado</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>bolsa %1</translation>
    </message>
    <message>
        <source>%1 in bag %2</source>
        <translation>%1 en la bolsa %2</translation>
    </message>
</context>
<context>
    <name>StripActions</name>
    <message>
        <source>Wires</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Sujeto por</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Bolsa</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Bolsa %1</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Paso siguiente</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>StripEntryActions</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>StripPage</name>
    <message>
        <source>Step %1</source>
        <translation>Paso %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>paso %1</translation>
    </message>
    <message>
        <source>Correct step</source>
        <translation>Corregir el paso</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Sujeto por</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Bolsa</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Desmontar</translation>
    </message>
    <message>
        <source>Keep the bag</source>
        <translation>Guardar la bolsa</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Steps so far</source>
        <translation>Pasos hasta ahora</translation>
    </message>
</context>
<context>
    <name>StripPanel</name>
    <message>
        <source>Photo of this step</source>
        <translation>Foto de este paso</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Qué se quita</translation>
    </message>
    <message>
        <source>unplug 6-place connector</source>
        <translation>soltar el conector de 6 vías</translation>
    </message>
    <message>
        <source>tap to take it off the list</source>
        <translation>tocar para quitarlo de la lista</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>to know when it goes on again</source>
        <translation>para saber cuándo se monta</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Añadir un aviso</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>¿Qué aviso va antes de este paso?</translation>
    </message>
</context>
<context>
    <name>StripTask</name>
    <message>
        <source>task of this step</source>
        <translation>tarea de este paso</translation>
    </message>
    <message>
        <source>tasks can wait one by one</source>
        <translation>las tareas pueden esperar una a una</translation>
    </message>
    <message>
        <source>No task</source>
        <translation>Sin tarea</translation>
    </message>
    <message>
        <source>New task</source>
        <translation>Nueva tarea</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno delantero</translation>
    </message>
    <message>
        <source>Which task does this step belong to?</source>
        <translation>¿A qué tarea pertenece este paso?</translation>
    </message>
</context>
<context>
    <name>StrokeActions</name>
    <message>
        <source>Confirm</source>
        <translation>Confirmar</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Es %1</translation>
    </message>
    <message>
        <source>Next open wire</source>
        <translation>Otro cable abierto</translation>
    </message>
    <message>
        <source>Other colour</source>
        <translation>Otro color</translation>
    </message>
    <message>
        <source>All %1 sure</source>
        <translation>Los %1 seguros</translation>
    </message>
    <message>
        <source>None sure</source>
        <translation>Ninguno seguro</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Look at this wire again</source>
        <translation>Mirar otra vez este cable</translation>
    </message>
    <message>
        <source>White paper is in the picture: tap it</source>
        <translation>Hay papel blanco en la imagen: tocarlo</translation>
    </message>
    <message>
        <source>Turn round: place 1 is at the other end</source>
        <translation>Dar la vuelta: la vía 1 está al otro extremo</translation>
    </message>
    <message>
        <source>This place is empty</source>
        <translation>Esta vía está vacía</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>En una vía propia</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Segundo cable de la vía anterior</translation>
    </message>
    <message>
        <source>A wire is missing before this one</source>
        <translation>Falta un cable antes de este</translation>
    </message>
    <message>
        <source>A wire is missing after this one</source>
        <translation>Falta un cable después de este</translation>
    </message>
    <message>
        <source>This is no wire: take it out</source>
        <translation>No es un cable: quitarlo</translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Ya no confirmado</translation>
    </message>
    <message>
        <source>Bring the rows before the last stroke back</source>
        <translation>Recuperar las filas de antes del último trazo</translation>
    </message>
</context>
<context>
    <name>StrokeFinding</name>
    <message>
        <source>Take these %1</source>
        <translation>Tomar estos %1</translation>
    </message>
    <message>
        <source>None touched</source>
        <translation>Ninguno tocado</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Stroke instead</source>
        <translation>Mejor un trazo</translation>
    </message>
</context>
<context>
    <name>StrokePage</name>
    <message>
        <source>%1 open</source>
        <translation>%1 abiertos</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Abriendo la foto</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Leyendo los cables</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Tap the middle of the white paper.</source>
        <translation>Tocar el centro del papel blanco.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Ahora tocar el último cable.</translation>
    </message>
    <message>
        <source>Stroke across the wires, place 1 first. Or tap the first wire and then the last.</source>
        <translation>Pasar el dedo por los cables, la vía 1 primero. O tocar el primer cable y luego el último.</translation>
    </message>
    <message>
        <source>Open the photo again</source>
        <translation>Abrir la foto otra vez</translation>
    </message>
    <message>
        <source>Find the wires without a stroke</source>
        <translation>Hallar los cables sin trazo</translation>
    </message>
    <message>
        <source>White paper is in the picture</source>
        <translation>Hay papel blanco en la imagen</translation>
    </message>
</context>
<context>
    <name>StrokePhoto</name>
    <message>
        <source>Photo of the wires</source>
        <translation>Foto de los cables</translation>
    </message>
</context>
<context>
    <name>TakeInMachine</name>
    <message>
        <source>Machine</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Número de bastidor</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Cuentakilómetros</translation>
    </message>
    <message>
        <source>Odometer counts</source>
        <translation>El cuentakilómetros cuenta</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>Ridden at, metres above the sea</source>
        <translation>Circula a, metros sobre el mar</translation>
    </message>
    <message>
        <source>Rider with clothes, kg</source>
        <translation>Conductor con ropa, kg</translation>
    </message>
    <message>
        <source>Luggage or second rider, kg</source>
        <translation>Equipaje o pasajero, kg</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>two riders on Sundays, parcels</source>
        <translation>dos los domingos, paquetes</translation>
    </message>
</context>
<context>
    <name>TakeInOwner</name>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Owner&apos;s name</source>
        <translation>Nombre del dueño</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Mail</source>
        <translation>Correo</translation>
    </message>
</context>
<context>
    <name>TakeInPage</name>
    <message>
        <source>Machine and owner</source>
        <translation>Vehículo y dueño</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Abrir la orden</translation>
    </message>
    <message>
        <source>Continues the entry from %1</source>
        <translation>Sigue la entrada de %1</translation>
    </message>
</context>
<context>
    <name>TakeInReason</name>
    <message>
        <source>Why it is here</source>
        <translation>Por qué está aquí</translation>
    </message>
    <message>
        <source>no lights, stood six winters</source>
        <translation>sin luces, parado seis inviernos</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Llaves y papeles recibidos</translation>
    </message>
    <message>
        <source>two keys, registration</source>
        <translation>dos llaves, permiso de circulación</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Qué funciona</translation>
    </message>
    <message>
        <source>kicks over, front brake holds</source>
        <translation>arranca a pedal, el freno delantero aguanta</translation>
    </message>
    <message>
        <source>What does not work</source>
        <translation>Qué no funciona</translation>
    </message>
    <message>
        <source>horn, all lamps</source>
        <translation>claxon, todas las luces</translation>
    </message>
</context>
<context>
    <name>TaskPage</name>
    <message>
        <source>Stop the watch</source>
        <translation>Parar el reloj</translation>
    </message>
    <message>
        <source>Start the watch</source>
        <translation>Poner el reloj</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Ya no espera</translation>
    </message>
    <message>
        <source>Let it wait</source>
        <translation>Dejar en espera</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Retomarla</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminada</translation>
    </message>
    <message>
        <source>Waits for %1</source>
        <translation>Espera %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abierta</translation>
    </message>
    <message>
        <source>The watch runs. %1 so far.</source>
        <translation>El reloj corre. %1 hasta ahora.</translation>
    </message>
    <message>
        <source>Time spent: %1</source>
        <translation>Tiempo empleado: %1</translation>
    </message>
    <message>
        <source>This watch ran longer than anyone works at a stretch. How many minutes was it?</source>
        <translation>Este reloj corrió más de lo que nadie trabaja de un tirón. ¿Cuántos minutos fueron?</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>It was that long</source>
        <translation>Fue así de largo</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>¿Qué espera?</translation>
    </message>
    <message>
        <source>brake shoes, on order</source>
        <translation>zapatas de freno, pedidas</translation>
    </message>
    <message>
        <source>To be finished first</source>
        <translation>Por terminar antes</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primero</translation>
    </message>
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>Vaciar %1</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>Vaciar %1</translation>
    </message>
</context>
<context>
    <name>TwinsPanel</name>
    <message>
        <source>Twins</source>
        <translation>Gemelos</translation>
    </message>
    <message>
        <source>Tag them</source>
        <translation>Marcarlos</translation>
    </message>
    <message>
        <source>Tag on %1</source>
        <translation>Marca en %1</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
</context>
<context>
    <name>VerdictMark</name>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>muy justo</translation>
    </message>
</context>
<context>
    <name>WireLoupe</name>
    <message>
        <source>The wire that was understood, enlarged</source>
        <translation>El cable entendido, ampliado</translation>
    </message>
</context>
<context>
    <name>WirePicker</name>
    <message>
        <source>Choose the base colour again</source>
        <translation>Elegir otra vez el color base</translation>
    </message>
    <message>
        <source>Base colour</source>
        <translation>Color base</translation>
    </message>
    <message>
        <source>%1: which tracer?</source>
        <translation>%1: ¿qué trazo?</translation>
    </message>
    <message>
        <source>no tracer</source>
        <translation>sin trazo</translation>
    </message>
</context>
<context>
    <name>WireSteps</name>
    <message>
        <source>The next wire on that side was meant</source>
        <translation>Era el cable vecino de ese lado</translation>
    </message>
    <message>
        <source>Wire above</source>
        <translation>Cable de arriba</translation>
    </message>
    <message>
        <source>Wire left</source>
        <translation>Cable a la izquierda</translation>
    </message>
    <message>
        <source>Wire below</source>
        <translation>Cable de abajo</translation>
    </message>
    <message>
        <source>Wire right</source>
        <translation>Cable a la derecha</translation>
    </message>
</context>
<context>
    <name>Wiring</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>no tag</source>
        <translation>sin marca</translation>
    </message>
    <message>
        <source>tag %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>%1 × %2: places %3.</source>
        <translation>%1 × %2: vías %3.</translation>
    </message>
    <message>
        <source>Told apart by %1.</source>
        <translation>Se distinguen por %1.</translation>
    </message>
    <message>
        <source>Tag them, or tell them apart by terminal: %1.</source>
        <translation>Marcarlos, o distinguirlos por el terminal: %1.</translation>
    </message>
    <message>
        <source>Tag them before they are unplugged.</source>
        <translation>Marcarlos antes de soltarlos.</translation>
    </message>
    <message>
        <source>To you places %1 and %2 look alike: %3 and %4.</source>
        <translation>Para tus ojos las vías %1 y %2 son iguales: %3 y %4.</translation>
    </message>
    <message>
        <source>With tags at %1 every wire can be told apart.</source>
        <translation>Con marcas en %1 se distingue cada cable.</translation>
    </message>
    <message numerus="yes">
        <source>%n places</source>
        <translation>
            <numerusform>%n vía</numerusform>
            <numerusform>%n vías</numerusform>
        </translation>
    </message>
    <message>
        <source>seen from the %1</source>
        <translation>visto desde: %1</translation>
    </message>
    <message>
        <source>latch %1</source>
        <translation>cierre %1</translation>
    </message>
    <message>
        <source>no wire confirmed yet</source>
        <translation>aún ningún cable confirmado</translation>
    </message>
    <message>
        <source>%1 wires confirmed, %2 places</source>
        <translation>%1 cables confirmados, %2 vías</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>as it should be, not as found</source>
        <translation>como debe ser, no como llegó</translation>
    </message>
    <message>
        <source>should be %1</source>
        <translation>debería ser %1</translation>
    </message>
    <message>
        <source>read from the photo, confirmed</source>
        <translation>leído de la foto, confirmado</translation>
    </message>
    <message>
        <source>second choice of the reader, confirmed</source>
        <translation>segunda opción del lector, confirmada</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>elegido a mano</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>escrito</translation>
    </message>
    <message>
        <source>glare covers it: tilt the phone</source>
        <translation>lo tapa un brillo: inclinar el teléfono</translation>
    </message>
    <message>
        <source>too dark to tell: bring a light</source>
        <translation>demasiado oscuro: traer una luz</translation>
    </message>
    <message>
        <source>too small in the picture: go closer</source>
        <translation>demasiado pequeño: acercarse</translation>
    </message>
    <message>
        <source>the light is not known: lay white paper beside it</source>
        <translation>luz desconocida: poner papel blanco al lado</translation>
    </message>
    <message>
        <source>too little of it is free: move what lies across</source>
        <translation>se ve muy poco: apartar lo que cruza</translation>
    </message>
    <message>
        <source>two colours are about as likely</source>
        <translation>dos colores son casi igual de probables</translation>
    </message>
    <message>
        <source>likely, but not certain</source>
        <translation>probable, pero no seguro</translation>
    </message>
    <message>
        <source>tapped beside it: see that the outlined wire is meant</source>
        <translation>tocado al lado: ver que el cable marcado sea el bueno</translation>
    </message>
    <message>
        <source>nothing like a wire here: tap on the wire</source>
        <translation>aquí nada parece un cable: tocar el cable</translation>
    </message>
    <message>
        <source>too bright to tell: less light, or no flash</source>
        <translation>demasiado claro: menos luz, o sin flash</translation>
    </message>
    <message>
        <source>two lights mix on it: shade one of them</source>
        <translation>se mezclan dos luces: tapar una</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>ningún cable encontrado</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>not sure: %1?</source>
        <translation>no seguro: ¿%1?</translation>
    </message>
    <message>
        <source>not sure: %1 or %2</source>
        <translation>no seguro: %1 o %2</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>conector</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>terminales sueltos</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>empalme</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>masa común</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>lado cables</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>cara de contacto</translation>
    </message>
    <message>
        <source>loom half</source>
        <translation>lado mazo</translation>
    </message>
    <message>
        <source>unit half</source>
        <translation>lado aparato</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>como llegó</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>como debe ser</translation>
    </message>
    <message>
        <source>as refitted</source>
        <translation>como se montó</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>faston macho</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>faston hembra</translation>
    </message>
    <message>
        <source>bullet</source>
        <translation>bala macho</translation>
    </message>
    <message>
        <source>bullet socket</source>
        <translation>bala hembra</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>anillo</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>horquilla</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pasador</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>zócalo</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>pelado</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>vía %1</translation>
    </message>
    <message>
        <source>place %1, second wire</source>
        <translation>vía %1, segundo cable</translation>
    </message>
    <message>
        <source>DIN %1</source>
        <translation>DIN %1</translation>
    </message>
</context>
<context>
    <name>WiringPage</name>
    <message>
        <source>Read wires back</source>
        <translation>Releer los cables</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>New connector</source>
        <translation>Nuevo conector</translation>
    </message>
    <message>
        <source>A connector, a row of loose terminals, a splice or a shared earth: say what it is before it is unplugged.</source>
        <translation>Un conector, una fila de terminales sueltos, un empalme o una masa común: decir qué es antes de soltarlo.</translation>
    </message>
    <message>
        <source>No wires mapped yet</source>
        <translation>Aún sin plano de cables</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>The picture %1 cannot be read: it is gone, or reading it is not allowed. Choose another one.</source>
        <translation>La imagen %1 no se puede leer: ya no está, o no se permite leerla. Elegir otra.</translation>
    </message>
    <message>
        <source>The picture %1 is larger than 200 MiB. Choose a smaller one.</source>
        <translation>La imagen %1 pasa de 200 MiB. Elegir una más pequeña.</translation>
    </message>
    <message>
        <source>%1 is not a JPEG or PNG picture, or it is damaged. Choose another one.</source>
        <translation>%1 no es una imagen JPEG o PNG, o está dañada. Elegir otra.</translation>
    </message>
    <message>
        <source>Not saved: the disk is full. Make room, then try again; what you entered is still here.</source>
        <translation>No guardado: el disco está lleno. Hacer sitio y probar otra vez; lo escrito sigue aquí.</translation>
    </message>
    <message>
        <source>Not saved: the system refused to write. What you entered is still here; try again.</source>
        <translation>No guardado: el sistema no quiso escribir. Lo escrito sigue aquí; probar otra vez.</translation>
    </message>
    <message>
        <source>The shop&apos;s store cannot be opened.</source>
        <translation>No se abre el almacén de datos del taller.</translation>
    </message>
    <message>
        <source>The shop&apos;s store is damaged. Nothing was deleted; keep a copy of it before anything else.</source>
        <translation>El almacén de datos del taller está dañado. No se borró nada; guardar una copia antes que nada.</translation>
    </message>
    <message>
        <source>The shop&apos;s store was written by a newer version. Bring this app up to date.</source>
        <translation>El almacén de datos del taller lo escribió una versión más nueva. Actualizar esta app.</translation>
    </message>
    <message>
        <source>Not saved.</source>
        <translation>No guardado.</translation>
    </message>
    <message>
        <source>unsafe</source>
        <translation>peligro</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>deseado</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>consultado</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>here</source>
        <translation>llegado</translation>
    </message>
    <message>
        <source>wrong one</source>
        <translation>equivocado</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montado</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>como llegó</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>paso de desmontaje</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>cables</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>montado</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>Machine not described yet</source>
        <translation>Vehículo aún sin describir</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>ayer %1</translation>
    </message>
    <message>
        <source>%1, %2 days ago</source>
        <translation>%1, hace %2 días</translation>
    </message>
    <message>
        <source>%1, %2 weeks ago</source>
        <translation>%1, hace %2 semanas</translation>
    </message>
    <message>
        <source>%1, %2 months ago</source>
        <translation>%1, hace %2 meses</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::FileCamera</name>
    <message>
        <source>The picture could not be written: %1. Make room, then try again.</source>
        <translation>No se pudo escribir la imagen: %1. Hacer sitio y probar otra vez.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MicrophoneListener</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or use the buttons.</source>
        <translation>Ningún micrófono responde. Permitirlo en los ajustes del dispositivo, o usar los botones.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or use the buttons.</source>
        <translation>El micrófono no se abre. Cerrar otros programas que lo usen, o usar los botones.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MultimediaCamera</name>
    <message>
        <source>The camera does not answer: %1. Close other programs that use it, or take the photo from a file.</source>
        <translation>La cámara no responde: %1. Cerrar otros programas que la usen, o tomar la foto de un archivo.</translation>
    </message>
    <message>
        <source>The photo was not taken: %1. Try again.</source>
        <translation>La foto no salió: %1. Probar otra vez.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemVoice</name>
    <message>
        <source>The voice failed. Read it on the screen.</source>
        <translation>Falló la voz. Leerlo en la pantalla.</translation>
    </message>
    <message>
        <source>This device has no voice. Install one in its settings, or read it on the screen.</source>
        <translation>Este dispositivo no tiene voz. Instalar una en sus ajustes, o leerlo en la pantalla.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::AfterwardsView</name>
    <message>
        <source>%1 is not on again</source>
        <translation>%1 no está montado</translation>
    </message>
    <message>
        <source>Do not start: %1</source>
        <translation>No arrancar: %1</translation>
    </message>
    <message>
        <source>Do not ride: %1</source>
        <translation>No circular: %1</translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation>tras: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Hecho: %1</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;goes home on a trailer&quot;.</source>
        <translation>Escribir por qué se deja, por ejemplo &quot;va a casa en remolque&quot;.</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Dejado: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::BackupView</name>
    <message>
        <source>This device</source>
        <translation>Este dispositivo</translation>
    </message>
    <message>
        <source>looking ...</source>
        <translation>buscando ...</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguna</translation>
    </message>
    <message>
        <source>At least eight characters; several words are best.</source>
        <translation>Al menos ocho caracteres; mejor varias palabras.</translation>
    </message>
    <message>
        <source>Type it once more, the same way.</source>
        <translation>Escribirla otra vez, igual.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was written and read again: %n photos and memos, %2.</source>
        <translation>
            <numerusform>%1 se escribió y se releyó: %n foto o nota, %2.</numerusform>
            <numerusform>%1 se escribió y se releyó: %n fotos y notas, %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not in it: %1</source>
        <translation>No está dentro: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Band</name>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CalcView</name>
    <message>
        <source>Still needed: %1</source>
        <translation>Aún falta: %1</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; posible: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>veredicto: %1</translation>
    </message>
    <message>
        <source>%1 sure to be within</source>
        <translation>%1 de seguridad de estar dentro</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>%1 if left empty</source>
        <translation>%1 si queda vacío</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>puede quedar vacío</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2 (from %3)</source>
        <translation>%1: %2 (de %3)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CompareView</name>
    <message>
        <source>Confirm the wires on the photo before first: there is nothing yet to compare with.</source>
        <translation>Confirmar primero los cables en la foto de antes: aún no hay con qué comparar.</translation>
    </message>
    <message>
        <source>Take a photo of the wires as they are now, from about the same side.</source>
        <translation>Tomar una foto de los cables como están ahora, más o menos desde el mismo lado.</translation>
    </message>
    <message>
        <source>The same: no wire has changed its place.</source>
        <translation>Igual: ningún cable cambió de sitio.</translation>
    </message>
    <message>
        <source>Cannot tell. Read the wires back one by one.</source>
        <translation>No se puede decir. Releer los cables uno a uno.</translation>
    </message>
    <message>
        <source>Changed: places %1 swapped.</source>
        <translation>Cambiado: vías %1 intercambiadas.</translation>
    </message>
    <message>
        <source>The wire of place %1 was not found: it is missing, or was not read.</source>
        <translation>El cable de la vía %1 no se encontró: falta, o no se leyó.</translation>
    </message>
    <message>
        <source>Changed: a wire more, number %1 of this stroke.</source>
        <translation>Cambiado: un cable más, el número %1 de este trazo.</translation>
    </message>
    <message>
        <source>Changed: another wire in place %1.</source>
        <translation>Cambiado: otro cable en la vía %1.</translation>
    </message>
    <message>
        <source>%1 wires were read, %2 are in the map: stroke across all of them, and only them</source>
        <translation>Se leyeron %1 cables, en el plano hay %2: pasar el dedo por todos, y solo por ellos</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ConsumablesView</name>
    <message>
        <source>batch %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>abierto %1</translation>
    </message>
    <message>
        <source>Type what goes in, such as &quot;brake fluid&quot;.</source>
        <translation>Escribir qué se pone, por ejemplo &quot;líquido de frenos&quot;.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CostView</name>
    <message>
        <source>Other work</source>
        <translation>Otro trabajo</translation>
    </message>
    <message>
        <source>%1 % tax: %2</source>
        <translation>impuesto %1 %: %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Escribir la moneda, por ejemplo EUR.</translation>
    </message>
    <message>
        <source>Type the rate as a number, such as 58.50.</source>
        <translation>Escribir la tarifa como número, por ejemplo 58.50.</translation>
    </message>
    <message>
        <source>Type the tax as a number of per cent, such as 19.</source>
        <translation>Escribir el impuesto como número por ciento, por ejemplo 21.</translation>
    </message>
    <message>
        <source>Reckoned</source>
        <translation>Calculado</translation>
    </message>
    <message>
        <source>Type what it is for, such as &quot;tyre fitted outside&quot;.</source>
        <translation>Escribir por qué concepto, por ejemplo &quot;neumático montado fuera&quot;.</translation>
    </message>
    <message>
        <source>Type the sum without tax as a number, such as 12.50.</source>
        <translation>Escribir el importe sin impuesto como número, por ejemplo 12.50.</translation>
    </message>
    <message>
        <source>Line added</source>
        <translation>Línea añadida</translation>
    </message>
    <message>
        <source>Line taken out</source>
        <translation>Línea quitada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Finder</name>
    <message>
        <source>machine</source>
        <translation>vehículo</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>dueño</translation>
    </message>
    <message>
        <source>job</source>
        <translation>orden</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>paso de desmontaje</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>cable</translation>
    </message>
    <message>
        <source>part</source>
        <translation>recambio</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>memo</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Findings</name>
    <message>
        <source>%1 does not want it put right (%2)</source>
        <translation>%1 no quiere que se repare (%2)</translation>
    </message>
    <message>
        <source>is a task</source>
        <translation>es una tarea</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Escribir minutos enteros, por ejemplo 45.</translation>
    </message>
    <message>
        <source>Type what was found, such as &quot;brake hose cracked&quot;.</source>
        <translation>Escribir qué se encontró, por ejemplo &quot;latiguillo agrietado&quot;.</translation>
    </message>
    <message>
        <source>Choose how serious it is: unsafe, soon or note.</source>
        <translation>Elegir la gravedad: peligro, pronto o nota.</translation>
    </message>
    <message>
        <source>Finding kept</source>
        <translation>Hallazgo guardado</translation>
    </message>
    <message>
        <source>Task made: %1</source>
        <translation>Tarea creada: %1</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Resuelto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::FunctionsView</name>
    <message>
        <source>works</source>
        <translation>funciona</translation>
    </message>
    <message>
        <source>does not work</source>
        <translation>no funciona</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>no probado</translation>
    </message>
    <message>
        <source>when it came in: %1</source>
        <translation>al llegar: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::GatheringView</name>
    <message>
        <source>Type what it is, such as &quot;right switch cluster&quot;.</source>
        <translation>Escribir qué es, por ejemplo &quot;piña derecha&quot;.</translation>
    </message>
    <message>
        <source>Give the number of places, 1 to %1.</source>
        <translation>Dar el número de vías, 1 a %1.</translation>
    </message>
    <message>
        <source>Give the number of rows, 1 to %1.</source>
        <translation>Dar el número de filas, 1 a %1.</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 guardado</translation>
    </message>
    <message>
        <source>Place 1 marked</source>
        <translation>Vía 1 marcada</translation>
    </message>
    <message>
        <source>Tag taken off</source>
        <translation>Marca quitada</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Marca %1</translation>
    </message>
    <message>
        <source>Tagged %1</source>
        <translation>Marcado: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::HandOverView</name>
    <message>
        <source>Settle it, or record that the owner does not want it.</source>
        <translation>Resolverlo, o anotar que el dueño no lo quiere.</translation>
    </message>
    <message>
        <source>Do it, or say why it is left out.</source>
        <translation>Hacerlo, o decir por qué se deja.</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Sin montar: %1</translation>
    </message>
    <message>
        <source>Bag %1 is still closed.</source>
        <translation>La bolsa %1 sigue cerrada.</translation>
    </message>
    <message>
        <source>Wire in place %1 does not match</source>
        <translation>El cable de la vía %1 no coincide</translation>
    </message>
    <message>
        <source>Part not fitted: %1</source>
        <translation>Recambio sin montar: %1</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::InstrumentsView</name>
    <message>
        <source>Calibration overdue since %1: its limit of error cannot be relied on</source>
        <translation>Calibración vencida desde el %1: no se puede confiar en su límite de error</translation>
    </message>
    <message>
        <source>No calibration is recorded; due on %1</source>
        <translation>Sin calibración anotada; toca el %1</translation>
    </message>
    <message>
        <source>Calibration due today</source>
        <translation>Calibración: toca hoy</translation>
    </message>
    <message>
        <source>Calibration due tomorrow, on %1</source>
        <translation>Calibración: toca mañana, el %1</translation>
    </message>
    <message>
        <source>Calibration due on %1, in %2 days</source>
        <translation>Calibración: toca el %1, dentro de %2 días</translation>
    </message>
    <message>
        <source>Calibrated on %1, no date set for the next time</source>
        <translation>Calibrado el %1, sin fecha para la próxima vez</translation>
    </message>
    <message>
        <source>No calibration is recorded</source>
        <translation>Sin calibración anotada</translation>
    </message>
    <message>
        <source>%1, %2 to %3, %4</source>
        <translation>%1, %2 a %3, %4</translation>
    </message>
    <message>
        <source>Choose what kind of instrument it is.</source>
        <translation>Elegir la clase de instrumento.</translation>
    </message>
    <message>
        <source>Another instrument for the same quantity has this name: choose another one.</source>
        <translation>Otro instrumento para la misma magnitud tiene este nombre: elegir otro.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>No longer used: %1</source>
        <translation>Ya no se usa: %1</translation>
    </message>
    <message>
        <source>In use again: %1</source>
        <translation>En uso otra vez: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Insulations</name>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turquesa</translation>
    </message>
    <message>
        <source>light blue</source>
        <translation>azul claro</translation>
    </message>
    <message>
        <source>light green</source>
        <translation>verde claro</translation>
    </message>
    <message>
        <source>colour not known</source>
        <translation>color no conocido</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <comment>base colour, tracer colour</comment>
        <translation>%1, trazo %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobMemoList</name>
    <message>
        <source>Memo kept</source>
        <translation>Nota guardada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobView</name>
    <message>
        <source>waits for %1</source>
        <translation>espera %1</translation>
    </message>
    <message>
        <source>the watch was forgotten</source>
        <translation>se olvidó parar el reloj</translation>
    </message>
    <message>
        <source>the watch runs</source>
        <translation>el reloj corre</translation>
    </message>
    <message>
        <source>first %1</source>
        <translation>primero %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Bolsa %1</translation>
    </message>
    <message>
        <source>Type what the task is, such as &quot;front brake&quot;.</source>
        <translation>Escribir cuál es la tarea, por ejemplo &quot;freno delantero&quot;.</translation>
    </message>
    <message>
        <source>Task kept</source>
        <translation>Tarea guardada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::KnowledgeView</name>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>par</translation>
    </message>
    <message>
        <source>part</source>
        <translation>recambio</translation>
    </message>
    <message>
        <source>wiring map</source>
        <translation>plano de cables</translation>
    </message>
    <message>
        <source>adjustment</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>held in jobs: %1</source>
        <translation>valió en órdenes: %1</translation>
    </message>
    <message>
        <source>Does not agree: %1</source>
        <translation>No concuerda: %1</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>El resto</translation>
    </message>
    <message>
        <source>Taken over: %1</source>
        <translation>Llevado: %1</translation>
    </message>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>No se puede escribir %1. Hacer sitio y probar otra vez.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LabelsView</name>
    <message>
        <source>Bag %1, all of it is on again</source>
        <translation>Bolsa %1, todo montado</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Bolsa %1</translation>
    </message>
    <message>
        <source>Type a place on the sheet, such as 1.</source>
        <translation>Escribir un sitio de la hoja, por ejemplo 1.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MeasureView</name>
    <message>
        <source>none named</source>
        <translation>ninguno nombrado</translation>
    </message>
    <message>
        <source>%1, of the shop</source>
        <translation>%1, del taller</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>ningún instrumento nombrado</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, assumed</source>
        <translation>%1: %2, supuesto</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manual</translation>
    </message>
    <message>
        <source>shop&apos;s record</source>
        <translation>taller</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norma</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>calculado aquí</translation>
    </message>
    <message>
        <source>Type a value first; then the next one can be typed.</source>
        <translation>Escribir primero un valor; luego el siguiente.</translation>
    </message>
    <message>
        <source>mean of %1: %2, spread %3</source>
        <translation>media de %1: %2, dispersión %3</translation>
    </message>
    <message>
        <source>%1 % sure to be within: %2</source>
        <translation>seguro al %1 % de estar dentro: %2</translation>
    </message>
    <message>
        <source>source of the limits not named</source>
        <translation>fuente de los límites sin nombrar</translation>
    </message>
    <message>
        <source>No limits given: the value is kept without a verdict.</source>
        <translation>Sin límites: el valor se guarda sin veredicto.</translation>
    </message>
    <message>
        <source>No instrument named, so its uncertainty is not known: the value is kept without a verdict.</source>
        <translation>Ningún instrumento nombrado, así que no se sabe su incertidumbre: el valor se guarda sin veredicto.</translation>
    </message>
    <message>
        <source>What would settle it: %1</source>
        <translation>Qué lo aclararía: %1</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>media de %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ModelsView</name>
    <message>
        <source>jobs: %1</source>
        <translation>órdenes: %1</translation>
    </message>
    <message>
        <source>This file cannot be read, or is no knowledge of a model: %1</source>
        <translation>Este archivo no se lee, o no es saber de un modelo: %1</translation>
    </message>
    <message>
        <source>%1 %2, facts: %3</source>
        <translation>%1 %2, datos: %3</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Aprendido: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::NeedsView</name>
    <message>
        <source>Do not start until this is on and all that follows is done.</source>
        <translation>No arrancar hasta que esto esté montado y todo lo que sigue, hecho.</translation>
    </message>
    <message>
        <source>Do not ride until this is on and all that follows is done.</source>
        <translation>No circular hasta que esto esté montado y todo lo que sigue, hecho.</translation>
    </message>
    <message>
        <source>Kept for the refit</source>
        <translation>Guardado para el montaje</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OrdersView</name>
    <message>
        <source>No supplier chosen</source>
        <translation>Sin proveedor elegido</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OwnersWord</name>
    <message>
        <source>called</source>
        <translation>llamó</translation>
    </message>
    <message>
        <source>wrote</source>
        <translation>escribió</translation>
    </message>
    <message>
        <source>stood here</source>
        <translation>estuvo aquí</translation>
    </message>
    <message>
        <source>Not wanted: %1</source>
        <translation>No querido: %1</translation>
    </message>
    <message>
        <source>Type who said no: the record names them.</source>
        <translation>Escribir quién dijo que no: el informe lo nombra.</translation>
    </message>
    <message>
        <source>Choose how it was said: called, wrote or stood here.</source>
        <translation>Elegir cómo se dijo: llamó, escribió o estuvo aquí.</translation>
    </message>
    <message>
        <source>Refusal kept</source>
        <translation>Negativa guardada</translation>
    </message>
    <message>
        <source>Type what it covers, such as &quot;front brake, tyres&quot;.</source>
        <translation>Escribir qué abarca, por ejemplo &quot;freno delantero, neumáticos&quot;.</translation>
    </message>
    <message>
        <source>Type who said so.</source>
        <translation>Escribir quién lo dijo.</translation>
    </message>
    <message>
        <source>Write the sum as digits, such as 120.50.</source>
        <translation>Escribir el importe en cifras, por ejemplo 120.50.</translation>
    </message>
    <message>
        <source>Write the currency in three letters, such as EUR.</source>
        <translation>Escribir la moneda en tres letras, por ejemplo EUR.</translation>
    </message>
    <message>
        <source>Approval kept</source>
        <translation>Aprobación guardada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartForm</name>
    <message>
        <source>Part</source>
        <translation>Recambio</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Vale</translation>
    </message>
    <message>
        <source>After a change</source>
        <translation>Con cambio</translation>
    </message>
    <message>
        <source>Does not fit</source>
        <translation>No vale</translation>
    </message>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Escribir qué recambio es, por ejemplo &quot;latiguillo delantero&quot;.</translation>
    </message>
    <message>
        <source>Type the price as a number, such as 18.50.</source>
        <translation>Escribir el precio como número, por ejemplo 18.50.</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Escribir la moneda, por ejemplo EUR.</translation>
    </message>
    <message>
        <source>Type why, such as &quot;pivot hole 1 mm too small&quot;.</source>
        <translation>Escribir por qué, por ejemplo &quot;agujero del eje 1 mm pequeño&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Recambio guardado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartsList</name>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Escribir qué recambio es, por ejemplo &quot;latiguillo delantero&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Recambio guardado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoCapture</name>
    <message>
        <source>There is no camera here. Take the photo from a file.</source>
        <translation>Aquí no hay cámara. Tomar la foto de un archivo.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>La cámara se está abriendo.</translation>
    </message>
    <message>
        <source>This app may not use the camera. Allow it in the system&apos;s settings, or take the photo from a file.</source>
        <translation>Esta app no puede usar la cámara. Permitirlo en los ajustes del sistema, o tomar la foto de un archivo.</translation>
    </message>
    <message>
        <source>The disk is full: make room before you take more photos. Those that were taken are still here and are kept as soon as there is room.</source>
        <translation>El disco está lleno: hacer sitio antes de más fotos. Las hechas siguen aquí y se guardan en cuanto haya sitio.</translation>
    </message>
    <message>
        <source>Photo saved</source>
        <translation>Foto guardada</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoReader</name>
    <message>
        <source>no wire was found further on that side</source>
        <translation>por ese lado no se encontró más cable</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PlaceView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Say where that is known from, such as &quot;manual, page 7-12&quot;.</source>
        <translation>Decir de dónde se sabe, por ejemplo &quot;manual, página 7-12&quot;.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Give the size in millimetres, such as 6.3.</source>
        <translation>Dar el tamaño en milímetros, por ejemplo 6.3.</translation>
    </message>
    <message>
        <source>Terminal: %1</source>
        <translation>Terminal: %1</translation>
    </message>
    <message>
        <source>Give the size in square millimetres, such as 0.75.</source>
        <translation>Dar la sección en milímetros cuadrados, por ejemplo 0.75.</translation>
    </message>
    <message>
        <source>Wire size kept</source>
        <translation>Sección guardada</translation>
    </message>
    <message>
        <source>Function: %1</source>
        <translation>Función: %1</translation>
    </message>
    <message>
        <source>DIN number kept</source>
        <translation>Número DIN guardado</translation>
    </message>
    <message>
        <source>Tag kept</source>
        <translation>Marca guardada</translation>
    </message>
    <message>
        <source>%1: nothing there</source>
        <translation>%1: ahí no hay nada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProveView</name>
    <message>
        <source>proved</source>
        <translation>probado</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>probado: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>dejado: %1</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firmar</translation>
    </message>
    <message>
        <source>signed by %1</source>
        <translation>firmado por %1</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Probado</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;no road test before the tyres are here&quot;.</source>
        <translation>Escribir por qué se deja, por ejemplo &quot;sin prueba hasta tener los neumáticos&quot;.</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Dejado</translation>
    </message>
    <message>
        <source>Type the name of the one who looked.</source>
        <translation>Escribir el nombre de quien miró.</translation>
    </message>
    <message>
        <source>Signed by %1</source>
        <translation>Firmado por %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackEar</name>
    <message>
        <source>Nothing was heard. Hold, say it, then let go.</source>
        <translation>No se oyó nada. Pulsar, decirlo y soltar.</translation>
    </message>
    <message>
        <source>Not sure what that was. Say it again.</source>
        <translation>No está claro qué era. Repetir.</translation>
    </message>
    <message>
        <source>That is nothing that can be said here. Say it again.</source>
        <translation>Eso aquí no se puede decir. Repetir.</translation>
    </message>
    <message>
        <source>That number is not believed. Say it again.</source>
        <translation>Ese número no es creíble. Repetir.</translation>
    </message>
    <message>
        <source>Heard &quot;%1&quot;. Here say done, does not match, next, back, again, slower, undo or stop.</source>
        <translation>Oído &quot;%1&quot;. Aquí valen done, does not match, next, back, again, slower, undo o stop.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackView</name>
    <message>
        <source>tag %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>looks like place %1</source>
        <translation>igual que la vía %1</translation>
    </message>
    <message>
        <source>%1; not tagged</source>
        <translation>%1; sin marca</translation>
    </message>
    <message>
        <source>%1; tag %2</source>
        <translation>%1; marca %2</translation>
    </message>
    <message>
        <source>%1 matches</source>
        <translation>%1 coincide</translation>
    </message>
    <message>
        <source>%1 does not match</source>
        <translation>%1 no coincide</translation>
    </message>
    <message>
        <source>swapped with %1</source>
        <translation>cambiado con %1</translation>
    </message>
    <message>
        <source>%1 swapped with %2</source>
        <translation>%1 cambiado con %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RefitView</name>
    <message>
        <source>%1 of %2 wires read back</source>
        <translation>%1 de %2 cables releídos</translation>
    </message>
    <message>
        <source>Routing: %1</source>
        <translation>Recorrido: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>Como llegó: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Vaciado: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the task %1</source>
        <translation>la tarea %1</translation>
    </message>
    <message>
        <source>Refitted: %1</source>
        <translation>Montado: %1</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Tarea retomada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoadView</name>
    <message>
        <source>after %1 %2</source>
        <translation>tras %1 %2</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>para el %1</translation>
    </message>
    <message>
        <source>seen to</source>
        <translation>atendido</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Prueba en carretera</translation>
    </message>
    <message>
        <source>Type how far it was ridden, such as 4.</source>
        <translation>Escribir cuánto se recorrió, por ejemplo 4.</translation>
    </message>
    <message>
        <source>Road test kept</source>
        <translation>Prueba guardada</translation>
    </message>
    <message>
        <source>Type what is to be looked at again, such as &quot;axle nut&quot;.</source>
        <translation>Escribir qué mirar otra vez, por ejemplo &quot;tuerca del eje&quot;.</translation>
    </message>
    <message>
        <source>Type the distance as a number, such as 50.</source>
        <translation>Escribir la distancia como número, por ejemplo 50.</translation>
    </message>
    <message>
        <source>Type whole days, such as 14.</source>
        <translation>Escribir días enteros, por ejemplo 14.</translation>
    </message>
    <message>
        <source>Recheck kept</source>
        <translation>Revisión guardada</translation>
    </message>
    <message>
        <source>Seen to</source>
        <translation>Atendido</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundListsView</name>
    <message>
        <source>looked over</source>
        <translation>repasado</translation>
    </message>
    <message>
        <source>tried at take-in</source>
        <translation>probado en la recepción</translation>
    </message>
    <message>
        <source>photographed at take-in</source>
        <translation>fotografiado en la recepción</translation>
    </message>
    <message>
        <source>checks: %1, %2</source>
        <translation>controles: %1, %2</translation>
    </message>
    <message>
        <source>Type the check and the part of the machine that it belongs to.</source>
        <translation>Escribir el control y la parte del vehículo.</translation>
    </message>
    <message>
        <source>This check stands in the list already.</source>
        <translation>Este control ya está en la lista.</translation>
    </message>
    <message>
        <source>Check added</source>
        <translation>Control añadido</translation>
    </message>
    <message>
        <source>Check taken out</source>
        <translation>Control quitado</translation>
    </message>
    <message>
        <source>Check changed</source>
        <translation>Control cambiado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundView</name>
    <message>
        <source>fine</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>sin hacer</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>finding: %1</source>
        <translation>hallazgo: %1</translation>
    </message>
    <message>
        <source>Fine: %1</source>
        <translation>Bien: %1</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Sin hacer: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundsView</name>
    <message>
        <source>%1 of %2 to go</source>
        <translation>faltan %1 de %2</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>hallazgos: %1</translation>
    </message>
    <message>
        <source>not done: %1</source>
        <translation>sin hacer: %1</translation>
    </message>
    <message>
        <source>all fine</source>
        <translation>todo bien</translation>
    </message>
    <message>
        <source>The shop&apos;s lists hold no check for this machine: add some in Settings.</source>
        <translation>Las listas del taller no tienen controles para este vehículo: añadirlos en Ajustes.</translation>
    </message>
    <message>
        <source>Round begun</source>
        <translation>Ronda empezada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ScanView</name>
    <message>
        <source>This picture cannot be read: %1</source>
        <translation>Esta imagen no se lee: %1</translation>
    </message>
    <message>
        <source>No code is read in this picture: take it closer and straight on.</source>
        <translation>En esta imagen no se lee ningún código: acercarse y enfocar de frente.</translation>
    </message>
    <message>
        <source>This label is of a job that is not in this shop.</source>
        <translation>Esta etiqueta es de una orden que no está en este taller.</translation>
    </message>
    <message>
        <source>Job %1 has no bag %2 any more.</source>
        <translation>La orden %1 ya no tiene bolsa %2.</translation>
    </message>
    <message>
        <source>Bag %1: %2</source>
        <translation>Bolsa %1: %2</translation>
    </message>
    <message>
        <source>No open job waits for a part with the number %1.</source>
        <translation>Ninguna orden abierta espera un recambio con el número %1.</translation>
    </message>
    <message>
        <source>Parts with the number %1</source>
        <translation>Recambios con el número %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SheetsView</name>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>No se puede escribir %1. Hacer sitio y probar otra vez.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Línea %1: %2</translation>
    </message>
    <message>
        <source>cannot be brought in</source>
        <translation>no se puede traer</translation>
    </message>
    <message>
        <source>This file cannot be read: %1</source>
        <translation>Este archivo no se lee: %1</translation>
    </message>
    <message>
        <source>Brought in: %1</source>
        <translation>Traído: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopHome</name>
    <message>
        <source>Machine not described yet</source>
        <translation>Vehículo aún sin describir</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSession</name>
    <message>
        <source>Type the name of the one who works here.</source>
        <translation>Escribir el nombre de quien trabaja aquí.</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>Undone</source>
        <translation>Deshecho</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSettings</name>
    <message>
        <source>As the device</source>
        <translation>Como el dispositivo</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SignatureView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type who signs.</source>
        <translation>Escribir quién firma.</translation>
    </message>
    <message>
        <source>Sign in the field with a finger.</source>
        <translation>Firmar en el campo con un dedo.</translation>
    </message>
    <message>
        <source>The signature cannot be made into a picture. Sign once more.</source>
        <translation>La firma no da una imagen. Firmar otra vez.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StripView</name>
    <message>
        <source>Strip step</source>
        <translation>Paso de desmontaje</translation>
    </message>
    <message>
        <source>Correction of a strip step</source>
        <translation>Corrección de un paso de desmontaje</translation>
    </message>
    <message>
        <source>Choose or type what it is, such as &quot;screw&quot;.</source>
        <translation>Elegir o escribir qué es, por ejemplo &quot;tornillo&quot;.</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;unplug 6-place connector&quot;.</source>
        <translation>Escribir qué se hizo, por ejemplo &quot;soltar el conector de 6 vías&quot;.</translation>
    </message>
    <message>
        <source>Step %1 kept</source>
        <translation>Paso %1 guardado</translation>
    </message>
    <message>
        <source>Step corrected</source>
        <translation>Paso corregido</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>En esta foto no se pudo seguir ningún cable. Pasar el dedo por los cables.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here.</source>
        <translation>Seguidos: %1. Tocar cada uno que sea de aquí.</translation>
    </message>
    <message>
        <source>Where ? stands no wire could be followed: if one belongs here, stroke instead.</source>
        <translation>Donde está ? no se pudo seguir un cable: si hay uno, hacer un trazo.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n wires confirmed</source>
        <translation>
            <numerusform>%n cable confirmado</numerusform>
            <numerusform>%n cables confirmados</numerusform>
        </translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Ya no confirmado</translation>
    </message>
    <message>
        <source>Turned round</source>
        <translation>Vuelta dada</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Quitado</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>Place empty</source>
        <translation>Vía vacía</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Segundo cable de la vía anterior</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>En una vía propia</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>Wires of %1</source>
        <translation>Cables de %1</translation>
    </message>
    <message>
        <source>%1 places read, %2 places in all: add those that are missing or empty</source>
        <translation>%1 vías leídas, %2 en total: añadir las que faltan o están vacías</translation>
    </message>
    <message>
        <source>%1 places read, only %2 in all: take out what is no wire of it</source>
        <translation>%1 vías leídas, solo %2 en total: quitar lo que no es cable suyo</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TakeIn</name>
    <message>
        <source>Type the make or the model, whatever is readable.</source>
        <translation>Escribir la marca o el modelo, lo que se lea.</translation>
    </message>
    <message>
        <source>The year is a number from %1 to %2; leave it empty if it is not known.</source>
        <translation>El año es un número de %1 a %2; dejarlo vacío si no se sabe.</translation>
    </message>
    <message>
        <source>A number that is not below 0.</source>
        <translation>Un número no menor que 0.</translation>
    </message>
    <message>
        <source>Type why it is here, such as &quot;no lights&quot;.</source>
        <translation>Escribir por qué está aquí, por ejemplo &quot;sin luces&quot;.</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; posible: %2</translation>
    </message>
    <message>
        <source>Check digit fits.</source>
        <translation>El dígito de control cuadra.</translation>
    </message>
    <message>
        <source>Taken as an older number without check digit.</source>
        <translation>Tomado como número antiguo sin dígito de control.</translation>
    </message>
    <message>
        <source>Read it again: %1</source>
        <translation>Leerlo otra vez: %1</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Vuelve de %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TaskView</name>
    <message>
        <source>%1 of %2 estimated</source>
        <translation>%1 de %2 estimados</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminada</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>Watch stopped</source>
        <translation>Reloj parado</translation>
    </message>
    <message>
        <source>Watch started</source>
        <translation>Reloj en marcha</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Escribir minutos enteros, por ejemplo 45.</translation>
    </message>
    <message>
        <source>Time corrected</source>
        <translation>Tiempo corregido</translation>
    </message>
    <message>
        <source>Type what it waits for, such as &quot;brake shoes&quot;.</source>
        <translation>Escribir qué espera, por ejemplo &quot;zapatas de freno&quot;.</translation>
    </message>
    <message>
        <source>Task waits</source>
        <translation>La tarea espera</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Tarea retomada</translation>
    </message>
    <message>
        <source>Task finished</source>
        <translation>Tarea terminada</translation>
    </message>
    <message>
        <source>%1 already comes after %2: take that back first.</source>
        <translation>%1 ya viene después de %2: quitar eso primero.</translation>
    </message>
    <message>
        <source>Order of tasks kept</source>
        <translation>Orden de las tareas guardado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ViewsView</name>
    <message>
        <source>photos: %1</source>
        <translation>fotos: %1</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>pasada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::WireRows</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>ningún cable encontrado</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confirmado</translation>
    </message>
</context>
</TS>
