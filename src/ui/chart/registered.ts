import { Chart, LineController, LineElement, LinearScale, PointElement } from 'chart.js';

Chart.register(LineController, LineElement, LinearScale, PointElement);

export { Chart };
